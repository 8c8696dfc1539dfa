// What the job page says and draws while something is half entered, and where it leads next.

#include "app/desktop/DeskStyle.h"
#include "app/desktop/form/Field.h"
#include "app/desktop/job/LoopPicture.h"
#include "app/desktop/job/RunClock.h"
#include "app/desktop/widgets/KeyedChoice.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScopeGuard>
#include <QScrollArea>
#include <QSet>
#include <QSignalSpy>

using namespace loopwright;
using namespace loopwright::jobs;

class JobGuidanceTest : public QObject
{
    Q_OBJECT

    static void enter(const QString &text = {}) { JobBench::enter(text); }
    static Field *fieldOf(JobBench &bench, const QString &name)
    {
        return qobject_cast<Field *>(bench.find<QWidget>(name)->parentWidget());
    }

    /// The parts that ask for most of the width, for the message.
    static QString widest(const QScrollArea &area)
    {
        QStringList list{QString("%1 are there").arg(area.viewport()->width())};
        for (const QWidget *each : area.widget()->findChildren<QWidget *>())
            if (each->isVisible() &&
                each->minimumSizeHint().width() > area.viewport()->width() * 0.85)
                list << QString("%1 %2: %3")
                            .arg(each->metaObject()->className(), each->objectName())
                            .arg(each->minimumSizeHint().width());
        return list.join("; ");
    }

    /// Where Tab goes to something that lies wholly above what it left.
    static QStringList stepsBack(const QWidget &page)
    {
        QStringList back;
        QSet<const QWidget *> seen{QApplication::focusWidget()};
        const QWidget *before = nullptr;
        for (int i = 0; i < 400; ++i) {
            JobBench::key(Qt::Key_Tab);
            const QWidget *now = QApplication::focusWidget();
            if (seen.contains(now))
                break;
            seen << now;
            if (!page.isAncestorOf(now))
                continue;
            if (before && now->mapTo(&page, now->rect().bottomLeft()).y() <
                              before->mapTo(&page, QPoint()).y())
                back << before->objectName() + " to " + now->objectName();
            before = now;
        }
        if (seen.size() < 20)
            back << QString("only %1 places").arg(seen.size());
        return back;
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
        JobBench::keys("61");
        auto *alarm = bench.find<QLabel>("safety.alarm");
        QVERIFY2(alarm->isVisible(), "a slip hides the hazard");
        QCOMPARE(bench.find<QLabel>("head.sentence")->text(), "Stop: nobody touches the pair.");
        const QImage picture = alarm->grab().toImage();
        QCOMPARE(picture.pixelColor(picture.width() - 4, picture.height() / 2),
                 colours().badGround);
        auto *field = fieldOf(bench, "safety.ac_v.ring_ground");
        QTRY_VERIFY(field && field->isInError());
        bench.find<QLineEdit>("safety.ac_v.ring_ground")->selectAll();
        enter("0.2");
        QVERIFY(!alarm->isVisible());
        QVERIFY2(!field->isInError(), "the mark stays after the reading was put right");
    }

    void aHazardIsRecordedBesideASlip()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        JobBench::keys("n");
        enter("x"); // tip to ground
        enter("61");
        const auto view = showOrder(bench.records(), "A-1001");
        QCOMPARE(view->facts.size(), 1U);
        const auto *card = view->facts.front().fact.as<SafetyFact>();
        QVERIFY(card && card->acV);
        QCOMPARE(card->acV->ringGround, 61.0);
        QVERIFY(!card->acV->tipGround);
        QCOMPARE(view->judged.cards.open().size(), 1U);
        const auto *said = bench.find<QWidget>("head.said");
        const auto *next = bench.find<QWidget>("next");
        QTRY_VERIFY2(said->y() >= next->geometry().bottom() + em(0.35),
                     "the frame around the button lies on what is said");
        bool told = false;
        for (const QLabel *label : bench.window().findChildren<QLabel *>())
            told = told || label->text().contains("Recorded without what could not be read");
        QVERIFY(told);
    }

    void aHazardIsTheNextSentence()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        JobBench::keys("n");
        enter("61");
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

    /// In the unit that the make-up is typed in, whatever the rules are stated in.
    void whatIsPredictedHasTheUnitOfTheMakeup()
    {
        JobBench bench({analogFields()});
        bench.at(5);
        bench.openJob("A-2001");
        bench.go("makeup.1.what");
        JobBench::keys("s");
        QCoreApplication::processEvents();
        enter("26");
        enter("9000 m");
        QString said;
        for (const SignLine *each : bench.window().findChildren<SignLine *>())
            if (each->text().startsWith("Predicted: "))
                said = each->text();
        QVERIFY2(said.contains("on 9000 m"), qPrintable(said));
        static const QRegularExpression feet("\\d ft\\b");
        QVERIFY2(!said.contains(feet), qPrintable(said));
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
        take(bench.records(), briFields(), {safety(1, 5)});
        bench.openJob("A-1001");
        QVERIFY(!bench.find<QWidget>("error_test.start")->isEnabled());
        bench.go("error_test.detector.quiet_seconds");
        for (const char *count : {"12", "0", "3", "3", "3", "3"})
            enter(count);
        JobBench::keys("y");
        QCOMPARE(JobBench::focus(), "error_test.start");
        bench.go("next");
        JobBench::key(Qt::Key_7, Qt::AltModifier);
        QCOMPARE(JobBench::focus(), "error_test.start");
    }

    void theWholePageFitsALowScreenAtTwiceTheSize()
    {
        JobBench bench({briFields()});
        bench.at(200);
        take(bench.records(), briFields(), briFacts());
        bench.openJob("A-1001");
        applyTheme(*qApp, Look::Light, 200);
        const auto atEnd = qScopeGuard([] { applyTheme(*qApp, Look::Light, 100); });
        bench.unfoldAll();
        bench.window().resize(2600, 1500);
        QTest::qWait(100);
        bench.window().resize(1280, 800);
        auto *area = bench.find<QScrollArea>("page");
        const auto wide = [area] { return area->widget()->width() > area->viewport()->width(); };
        QTRY_VERIFY2(!wide(), qPrintable(widest(*area)));
        QCOMPARE(bench.find<QLineEdit>("context.installer.edit")->cursorPosition(), 0);
    }

    void tabGoesDownThePage()
    {
        JobBench bench({briFields(), analogFields()});
        bench.at(20);
        for (const char *order : {"A-1001", "A-2001"}) {
            bench.openJob(order);
            bench.unfoldAll();
            QTest::qWait(300); // until the page is laid out
            const QStringList back = stepsBack(*bench.find<QScrollArea>("page")->widget());
            QVERIFY2(back.isEmpty(), qPrintable(back.join("; ")));
        }
        bench.window().editOrder("A-1001");
        bench.go("order.order_number");
        const QStringList back = stepsBack(*bench.window().current());
        QVERIFY2(back.isEmpty(), qPrintable(back.join("; ")));
    }

    /// The panel says what its steps wait for; a field says it to a screen reader alone.
    void whatAllFieldsWaitForIsSaidOnce()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        const QString said = bench.find<QWidget>("calls.title")->accessibleName();
        QVERIFY2(said.contains("safety card", Qt::CaseInsensitive), qPrintable(said));
        const Field *field = fieldOf(bench, "calls.call.out.B1.voice.outcome");
        const QString below = field->sentence(), spoken = field->field()->accessibleDescription();
        QVERIFY2(!below.contains("safety card", Qt::CaseInsensitive), qPrintable(below));
        QVERIFY2(spoken.contains("safety card", Qt::CaseInsensitive), qPrintable(spoken));
    }
    /// "Measured on the pair … done: 612 ohm", not once more what was measured.
    void aTitleIsNotRepeatedBehindItself()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        bench.openJob("A-1001");
        const QString said = bench.find<QWidget>("pair.title")->accessibleName();
        QVERIFY2(said.contains("612 ohm"), qPrintable(said));
        QCOMPARE(said.count("Measured on the pair"), 1);
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
        KeyedChoice choice({{u'A', "a", "First"}, {u'B', "b", "Second"}});
        QSignalSpy edited(&choice, &KeyedChoice::edited), chosen(&choice, &KeyedChoice::chosen);
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
