// The end of a run is told whatever page is open, once, and after a restart too.

#include "app/desktop/job/RunWatch.h"

#include "app/desktop/job/RunClock.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/Heard.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QToolButton>

using namespace loopwright;
using namespace loopwright::jobs;

class RunWatchTest : public QObject
{
    Q_OBJECT

    static void startRun(JobBench &bench)
    {
        take(bench.records(), briFields(), {safety(1, 5), detector(14, 29)});
        bench.openJob("A-1001");
        bench.go("error_test.start");
        JobBench::enter();
    }
    static QString notice(JobBench &bench)
    {
        auto *line = bench.find<SignLine>("notice.A-1001");
        return line && line->isVisible() ? line->text() : QString();
    }
    static QString left(JobBench &bench)
    {
        auto *run = bench.find<QToolButton>("rail.run.A-1001");
        return run && run->isVisible() ? run->toolTip().section(' ', -2, -2) : QString();
    }
    static RunWatch &watch(JobBench &bench) { return *bench.window().findChild<RunWatch *>(); }

private slots:
    void tellsTheEndWhileAnotherJobIsOpen()
    {
        JobBench bench({briFields(), analogFields()});
        bench.at(30);
        startRun(bench);
        watch(bench).look();
        QCOMPARE(watch(bench).running().keys(), QStringList("A-1001"));
        bench.window().openOrder("A-2001");
        QCOMPARE(bench.window().current()->title().contains("A-2001"), true);

        QSignalSpy over(&watch(bench), &RunWatch::over);
        Heard heard;
        bench.at(44.9);
        watch(bench).look();
        QCOMPARE(over.size(), 0);
        bench.at(45.1);
        watch(bench).look();
        QCOMPARE(over.size(), 1);
        QVERIFY(notice(bench).contains("The run of order A-1001 is over"));
        watch(bench).look();
        QCOMPARE(over.size(), 1);
        QCOMPARE(heard.take(), QStringList(notice(bench)));
        QVERIFY(watch(bench).running().isEmpty());
    }
    void knowsARunOfAnEarlierStart()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        bench.close();
        bench.at(40);
        bench.open(); // on the board; nobody opens the job
        QCOMPARE(watch(bench).running().keys(), QStringList("A-1001"));
        bench.at(46);
        watch(bench).look();
        QVERIFY(notice(bench).contains("The run of order A-1001 is over"));
    }
    void saysNothingOfARunThatWasStopped()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        watch(bench).look();
        bench.at(31);
        JobBench::keys("x");
        QSignalSpy over(&watch(bench), &RunWatch::over);
        watch(bench).look();
        bench.at(50);
        watch(bench).look();
        QCOMPARE(over.size(), 0);
    }
    /// A screen reader would say each second that the button has another name.
    void theRailTellsWhatIsLeftOnceAMinute()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        const auto *run = bench.find<QToolButton>("rail.run.A-1001");
        const QString told = "Run of order A-1001: %1 left";
        QCOMPARE(run->accessibleDescription(), told.arg("15:00"));
        bench.at(30.25);
        QTRY_COMPARE(left(bench), "14:45");
        QCOMPARE(run->accessibleDescription(), told.arg("14:45"));
        bench.at(30.75);
        QTRY_COMPARE(left(bench), "14:15");
        QCOMPARE(run->accessibleDescription(), told.arg("14:45"));
        QCOMPARE(run->accessibleName(), "Run, A-1001");
        QCOMPARE(run->text(), QString());
    }
    void noticesARunByItself()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        QTRY_COMPARE_WITH_TIMEOUT(watch(bench).running().keys(), QStringList("A-1001"), 20'000);
    }
    void theRailShowsWhatIsLeftOnEveryPage()
    {
        JobBench bench({briFields(), analogFields()});
        bench.at(30);
        QCOMPARE(left(bench), QString());
        startRun(bench);
        QCOMPARE(left(bench), "15:00"); // at once
        bench.at(32.5);
        for (const char *page : {"board", "register", "identifiers", "import", "audit"}) {
            bench.window().showScreen(page);
            QTRY_COMPARE(left(bench), "12:30");
        }
        bench.window().openOrder("A-2001");
        bench.window().resize(640, 480); // signs alone
        QTRY_VERIFY(!left(bench).isEmpty());
        bench.find<QToolButton>("rail.run.A-1001")->click();
        QCOMPARE(bench.window().current()->title(), "Job A-1001");
        QCOMPARE(JobBench::focus(), "error_test.clock");
        JobBench::keys("x");
        QCOMPARE(left(bench), QString());
    }

    void theNoticeStaysUntilTheRunIsOpened()
    {
        JobBench bench({briFields(), analogFields()});
        bench.at(30);
        startRun(bench);
        bench.window().showScreen("board");
        bench.at(46);
        watch(bench).look();
        QCOMPARE(left(bench), QString());
        QVERIFY(!notice(bench).isEmpty());
        bench.window().openOrder("A-2001");
        watch(bench).look();
        QVERIFY(!notice(bench).isEmpty());
        bench.find<QPushButton>("notice.open.A-1001")->click();
        QCOMPARE(bench.window().current()->title(), "Job A-1001");
        QCOMPARE(JobBench::focus(), "error_test.counts.bit_errors");
        QCOMPARE(notice(bench), QString());
        watch(bench).look();
        QCOMPARE(notice(bench), QString());
    }

    void theNoticeStaysUntilItIsDismissed()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        bench.window().showScreen("board");
        bench.close();
        bench.at(50); // over while the program was dead
        bench.open();
        QVERIFY(!notice(bench).isEmpty());
        bench.find<QPushButton>("notice.dismiss.A-1001")->click();
        watch(bench).look();
        QCOMPARE(notice(bench), QString());
        const QJsonObject place = bench.window().place();
        bench.close();
        bench.open();
        bench.window().restore(place);
        QCOMPARE(notice(bench), QString());
        JobBench::key(Qt::Key_F8);
        QCOMPARE(JobBench::focus(), "error_test.counts.bit_errors");
        for (const char *count : {"0", "0", "0", "0"})
            JobBench::enter(count);
        watch(bench).look();
        QVERIFY(watch(bench).ended().isEmpty());
        QVERIFY(drafts(bench.records(), "A-1001")->value(watchedPart).isEmpty());
    }

    void theTimeThatItWasDeadIsNotWatched()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        bench.at(32);
        JobBench::keys("3");
        bench.close();
        bench.at(35);
        bench.open();
        bench.window().openOrder("A-1001");
        const auto *clock = bench.find<RunClock>("error_test.clock");
        QCOMPARE(clock->log().gaps(), (std::vector<Stretch>{{120, 300}}));
        QVERIFY(clock->sentence().contains("Nobody watched 3:00"));
        bench.at(46);
        watch(bench).look();
        bench.window().openRun("A-1001");
        QCOMPARE(JobBench::focus(), "error_test.counts.bit_errors");
        QCOMPARE(clock->log().gaps(), (std::vector<Stretch>{{120, 300}}));
        // What was keyed is not all that there was: the test set is to be read.
        QCOMPARE(bench.find<QLineEdit>("error_test.counts.bit_errors")->text(), QString());
        for (const char *count : {"3", "1", "0", "0"})
            JobBench::enter(count);
        const auto view = showOrder(bench.records(), "A-1001");
        const auto *run = view->facts.back().fact.as<RunFact>();
        QVERIFY(run && !run->seconds);
        QCOMPARE(run->bitErrors, 3);
    }

    void aRunThatWasWatchedHasNoGap()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        bench.at(31);
        JobBench::keys("1");
        bench.window().showScreen("board");
        bench.at(46);
        watch(bench).look();
        bench.window().showScreen("job");
        const auto *clock = bench.find<RunClock>("error_test.clock");
        QTRY_VERIFY(bench.find<QLineEdit>("error_test.counts.bit_errors")->isVisible());
        QVERIFY(clock->log().gaps().empty());
        QCOMPARE(bench.find<QLineEdit>("error_test.counts.bit_errors")->text(), "1");
    }
};

QTEST_MAIN(RunWatchTest)
#include "RunWatchTest.moc"
