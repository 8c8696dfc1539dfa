// The end of a run is told whatever page is open, once, and after a restart too.

#include "app/desktop/job/RunWatch.h"

#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QLabel>
#include <QSignalSpy>

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
    static QString said(JobBench &bench) { return bench.find<QLabel>("said")->text(); }
    static RunWatch &watch(JobBench &bench) { return *bench.window().findChild<RunWatch *>(); }

private slots:
    void tellsTheEndWhileAnotherJobIsOpen()
    {
        JobBench bench({briFields(), analogFields()});
        bench.at(30);
        startRun(bench);
        watch(bench).look();
        QCOMPARE(watch(bench).running(), QStringList("A-1001"));
        bench.window().openOrder("A-2001");
        QCOMPARE(bench.window().current()->title().contains("A-2001"), true);

        QSignalSpy over(&watch(bench), &RunWatch::over);
        bench.at(44.9);
        watch(bench).look();
        QCOMPARE(over.size(), 0);
        bench.at(45.1);
        watch(bench).look();
        QCOMPARE(over.size(), 1);
        QCOMPARE(said(bench), QString("The run of order A-1001 is over."));
        watch(bench).look();
        QCOMPARE(over.size(), 1);
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
        QCOMPARE(watch(bench).running(), QStringList("A-1001"));
        bench.at(46);
        watch(bench).look();
        QCOMPARE(said(bench), QString("The run of order A-1001 is over."));
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
    void noticesARunByItself()
    {
        JobBench bench({briFields()});
        bench.at(30);
        startRun(bench);
        QTRY_COMPARE_WITH_TIMEOUT(watch(bench).running(), QStringList("A-1001"), 20'000);
    }
};

QTEST_MAIN(RunWatchTest)
#include "RunWatchTest.moc"
