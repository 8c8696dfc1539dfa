// Two lines at one premises in the real window: one arrival, one leaving, one set of certificates.

#include "app/actions/Certificates.h"
#include "app/actions/VerifyCertificate.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/screens/JobScreen.h"
#include "app/desktop/widgets/SignList.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QDir>
#include <QLabel>

using namespace loopwright;
using namespace loopwright::jobs;

class JobPremisesTest : public QObject
{
    Q_OBJECT

    static QString allText(StationPanel *widget)
    {
        widget->unfold();
        QString all;
        for (const QLabel *label : widget->findChildren<QLabel *>())
            if (label->isVisibleTo(widget))
                all += label->text() + '\n';
        for (const SignList *list : widget->findChildren<SignList *>())
            for (const SignItem &item : list->items())
                if (list->isVisibleTo(widget))
                    all += item.title + ' ' + item.text + '\n';
        return all;
    }
    static QString title(JobBench &bench) { return bench.window().current()->title(); }

private slots:
    void thePageNamesAndOpensTheOtherLines()
    {
        JobBench bench({briFields(), secondLine(), thirdLine()});
        bench.openJob("A-1001");
        const QString head = bench.find<QLabel>("head.also_here")->text();
        QVERIFY2(head.contains("A-2001, analog, due 6 Mar 2026") && head.contains("A-3001"),
                 qPrintable(head));
        JobBench::key(Qt::Key_F7);
        QTRY_COMPARE(title(bench), QString("Job A-2001"));
        JobBench::key(Qt::Key_F7);
        QTRY_COMPARE(title(bench), QString("Job A-3001"));
        JobBench::key(Qt::Key_F7);
        QTRY_COMPARE(title(bench), QString("Job A-1001"));
        auto *lines = bench.find<SignList>("visit.lines");
        QTRY_VERIFY(lines->isVisible());
        QCOMPARE(lines->items().size(), 2U);
        bench.go("visit.lines");
        QCOMPARE(lines->chosen(), QString("A-2001"));
        JobBench::enter();
        QTRY_COMPARE(title(bench), QString("Job A-2001"));
    }

    void anOrderAloneSaysNothingOfOthers()
    {
        JobBench bench({briFields(), analogFields()});
        bench.openJob("A-1001");
        QVERIFY(!bench.find<QLabel>("head.also_here")->isVisible());
        JobBench::key(Qt::Key_F7);
        QCOMPARE(title(bench), QString("Job A-1001"));
    }

    void oneArrivalAndOneLeaving()
    {
        JobBench bench({briFields(), secondLine()});
        bench.at(2);
        bench.openJob("A-1001");
        bench.go("visit.arrived.arrived");
        JobBench::enter();
        bench.at(30);
        bench.openJob("A-2001");
        const auto *page = bench.window().findChild<JobScreen *>();
        const QString visit = allText(page->panel("visit"));
        QVERIFY2(visit.contains("On site since 08:02, by the arrival in order A-1001"),
                 qPrintable(visit));
        // Another installer's arrival is not his.
        bench.go("context.installer");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::enter("S1");
        QVERIFY(!allText(page->panel("visit")).contains("On site since"));
        bench.go("context.installer");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::enter("K7");
        QVERIFY(allText(page->panel("visit")).contains("On site since 08:02"));

        bench.at(90);
        bench.go("leaving.left.result");
        JobBench::keys("w");
        JobBench::enter();
        const auto first = showOrder(bench.records(), "A-1001");
        const auto second = showOrder(bench.records(), "A-2001");
        QCOMPARE(second->facts.size(), 0u); // the leaving stands where the arrival does
        QCOMPARE(first->facts.size(), 2u);
        for (const auto *view : {&first, &second}) {
            QCOMPARE((*view)->visits.size(), 1u);
            QCOMPARE((*view)->visits[0].left->text(), QString("2026-03-04T09:30:00-06:00"));
        }
        QVERIFY(!allText(page->panel("visit")).contains("On site since"));
    }

    void aHazardOnOnePairDoesNotStopTheOther()
    {
        JobBench bench({briFields(), secondLine()});
        bench.at(10);
        take(bench.records(), briFields(), {arrival(50, 2), safety(51, 5, 61)});
        bench.openJob("A-1001");
        const auto sentence = [&bench] { return bench.find<QLabel>("head.sentence")->text(); };
        QCOMPARE(sentence(), "Stop: nobody touches the pair.");
        QVERIFY(!bench.find<QWidget>("pair.loop.measured.confirm")->isEnabled());
        bench.openJob("A-2001");
        QVERIFY2(sentence().startsWith("Next: make the safety card"), qPrintable(sentence()));
        take(bench.records(), secondLine(), {safety(60, 7)});
        bench.window().current()->refresh();
        QVERIFY(bench.find<QWidget>("pair.loop.measured.confirm")->isEnabled());
    }

    void theSetIsIssuedFromOneLine()
    {
        JobBench bench({briFields(), secondLine(), thirdLine()});
        bench.at(200);
        take(bench.records(), briFields(), QList{arrival(50, 2)} + briFacts());
        take(bench.records(), secondLine(), secondFacts());
        bench.openJob("A-1001");
        QVERIFY(bench.find<QWidget>("certificate.path")->isVisible());
        QVERIFY(bench.find<QWidget>("certificate.path.choose")->isVisible());
        bench.go("certificate.lines");
        JobBench::keys("p");
        QVERIFY(!bench.find<QWidget>("certificate.path")->isVisible());
        QVERIFY(!bench.find<QWidget>("certificate.path.choose")->isVisible());
        QVERIFY(bench.find<QWidget>("certificate.folder.choose")->isVisible());
        const auto *page = bench.window().findChild<JobScreen *>();
        const auto told = [page](const char *text) {
            return allText(page->panel("certificate")).contains(QString::fromLatin1(text));
        };
        QTRY_VERIFY(told("A-2001, analog: its certificate is in the set"));
        QVERIFY(told("A-3001, analog, at Safety: only on the cover."));
        const QString folder = QFileInfo(bench.path()).absolutePath() + "/set";
        bench.go("certificate.folder");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::enter(folder);
        QVERIFY(QDir(folder).entryList(QDir::Files).isEmpty()); // nobody has signed yet
        bench.go("certificate.folder");
        JobBench::enter();
        QCOMPARE(
            QDir(folder).entryList(QDir::Files),
            (QStringList{"certificate-A-1001.pdf", "certificate-A-2001.pdf", "cover-A-1001.pdf"}));
        for (const char *name : {"certificate-A-1001.pdf", "certificate-A-2001.pdf"}) {
            QFile file(folder + '/' + name);
            QVERIFY(file.open(QIODevice::ReadOnly));
            QCOMPARE(toText(verifyCertificateFile(bench.records(), file.readAll())->verdict),
                     "genuine");
        }
        QCOMPARE(showOrder(bench.records(), "A-2001")->certificates.size(), 1u);
    }
    void aLineAloneIsAskedNothingMore()
    {
        JobBench bench({briFields()});
        bench.at(200);
        take(bench.records(), briFields(), briFacts());
        bench.openJob("A-1001");
        QVERIFY(!bench.find<QWidget>("certificate.lines")->isVisible());
        QVERIFY(bench.find<QWidget>("certificate.path")->isVisible());
    }
};

QTEST_MAIN(JobPremisesTest)
#include "JobPremisesTest.moc"
