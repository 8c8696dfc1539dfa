// What the job page says and draws while something is half entered, and where it leads next.

#include "app/desktop/Theme.h"
#include "app/desktop/job/EntryField.h"
#include "app/desktop/job/LoopPicture.h"
#include "app/desktop/job/RunClock.h"
#include "app/desktop/widgets/KeyChoice.h"
#include "tests/support/JobBench.h"

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>

using namespace loopwright;
using namespace loopwright::jobs;

class JobGuidanceTest : public QObject
{
    Q_OBJECT

    static void enter(const QString &text = {}) { JobBench::enter(text); }
    static EntryField *fieldOf(JobBench &bench, const QString &name)
    {
        return qobject_cast<EntryField *>(bench.find<QWidget>(name)->parentWidget());
    }

private slots:
    void aSlipInOneFieldHidesNoHazardInAnother()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        JobBench::keys("n");
        enter("x");
        enter("61");
        auto *alarm = bench.find<QLabel>("safety.alarm");
        QVERIFY2(alarm->isVisible(), "a slip hides the hazard");
        const QImage picture = alarm->grab().toImage();
        QCOMPARE(picture.pixelColor(picture.width() - 4, picture.height() / 2),
                 colours().badGround);
        auto *field = fieldOf(bench, "safety.ac_v.ring_ground");
        QVERIFY(field && field->isInError());
        bench.go("safety.ac_v.ring_ground");
        bench.find<QLineEdit>("safety.ac_v.ring_ground")->selectAll();
        enter("0.2");
        QVERIFY(!alarm->isVisible());
        QVERIFY2(!field->isInError(), "the mark stays after the reading was put right");
    }

    void aHazardIsTheNextSentence()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        JobBench::keys("n");
        enter("61");
        for (int i = 0; i < 5; ++i)
            enter("0.1");
        JobBench::keys("yyyy");
        enter();
        QCOMPARE(bench.find<QLabel>("head.sentence")->text(), "Stop: nobody touches the pair.");
    }

    void theLoopStaysDrawnWhileARowIsTyped()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("makeup.1.what");
        JobBench::keys("s");
        QCoreApplication::processEvents(); // shows the next row
        enter("26");
        enter("9000");
        const auto *picture = bench.window().findChild<LoopPicture *>();
        const QString first = picture->accessibleDescription();
        QVERIFY2(first.contains("9000"), qPrintable(first));
        QCOMPARE(JobBench::focus(), "makeup.2.what");
        JobBench::keys("t24");
        QCoreApplication::processEvents();
        QCOMPARE(bench.find<QLineEdit>("makeup.1.length")->text(), "9000");
        QCOMPARE(bench.find<QLineEdit>("makeup.2.wire")->text(), "24");
        QCOMPARE(picture->accessibleDescription(), first);
        enter();
        enter("500");
        QVERIFY(picture->accessibleDescription().contains("500"));
        bench.go("makeup.2.what");
        JobBench::key(Qt::Key_Delete);
        QCOMPARE(picture->accessibleDescription(), first);
        QVERIFY(bench.find<QLineEdit>("makeup.2.length")->text().isEmpty());
    }

    void whatIsMissingInARowIsSaidInWordsOfThePage()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("makeup.1.what");
        JobBench::keys("s");
        enter("26");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const QList<SignLine *> lines = bench.window().findChildren<SignLine *>();
        QVERIFY(std::ranges::any_of(lines, [](const SignLine *line) {
            return line->isVisible() && line->text() == u"Row 1, length: is required and missing";
        }));
    }

    void afterTheDetectorCheckComesTheRun()
    {
        JobBench bench({briFields()});
        bench.at(20);
        bench.openJob("A-1001");
        bench.go("error_test.setup.call");
        JobBench::keys("o");
        for (const char *count : {"12", "0", "3", "3", "3", "3"})
            enter(count);
        JobBench::keys("y");
        QCOMPARE(JobBench::focus(), "error_test.start");
        bench.go("next");
        JobBench::key(Qt::Key_7, Qt::AltModifier);
        QCOMPARE(JobBench::focus(), "error_test.start");
    }

    void theCircuitIsOneKeyAway()
    {
        JobBench bench({briFields()});
        bench.openJob("A-1001");
        bench.go("head.circuit");
        JobBench::key(Qt::Key_Return);
        QCOMPARE(bench.window().current()->key(), "circuit");
    }

    void aChoiceTellsEveryChangeByHand()
    {
        KeyChoice choice({{u'A', "a", "First"}, {u'B', "b", "Second"}});
        QSignalSpy edited(&choice, &KeyChoice::edited), chosen(&choice, &KeyChoice::chosen);
        QTest::keyClick(&choice, Qt::Key_A);
        QTest::keyClick(&choice, Qt::Key_Right);
        QTest::keyClick(&choice, Qt::Key_Delete);
        QCOMPARE(edited.count(), 3);
        QCOMPARE(chosen.count(), 1);
        QCOMPARE(choice.code(), QString());
    }
};

QTEST_MAIN(JobGuidanceTest)
#include "JobGuidanceTest.moc"
