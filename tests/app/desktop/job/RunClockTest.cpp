// The run clock: what its keys do, what it shows while the run goes on and when it is over, and
// what is left of it in the draft.

#include "app/desktop/job/RunClock.h"

#include "tests/support/Jobs.h"

#include <QPainter>
#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

namespace {

const Moment start = *Moment::parse(u"2026-03-04T09:15:00-06:00");

/// A clock with 900 s to run and the time in the test's hands.
struct Bench
{
    Bench()
        : clock([this] { return now; }, jobs::limits())
    {
        clock.setRate(64000);
        clock.setLog(RunLog(start, 900));
        clock.resize(clock.sizeHint());
        clock.show();
    }

    void at(double seconds) { now = start.plusSeconds(seconds); }
    void press(const char *keys) { QTest::keyClicks(&clock, keys); }
    qint64 errors() const { return clock.summary().bitErrors; }
    QString told() const { return clock.accessibleName() + '|' + clock.accessibleDescription(); }

    Moment now = start;
    RunClock clock;
};

/// Stretches of rows with ink in the upper two thirds, parted by rows without.
int linesOfWords(RunClock &clock, const QSize &room)
{
    clock.resize(room);
    const QImage picture = clock.grab().toImage();
    int lines = 0;
    bool inside = false;
    for (int y = 8; y < picture.height() * 2 / 3; ++y) {
        bool ink = false;
        for (int x = 20; x < picture.width() - 20; ++x)
            ink |= picture.pixel(x, y) != picture.pixel(12, 12);
        lines += ink && !inside;
        inside = ink;
    }
    return lines;
}

/// Pixels that are not ground in the last third of the plot, below the words and above the times.
int inkOfTheLastThird(RunClock &clock)
{
    QImage picture = clock.grab().toImage();
    if (const QString folder = qEnvironmentVariable("LOOPWRIGHT_PICTURES"); !folder.isEmpty())
        picture.save(folder + QString("/clock-%1.png").arg(clock.clockText().replace(':', '-')));
    picture = picture.copy(picture.width() * 2 / 3, picture.height() * 6 / 10, picture.width() / 4,
                           picture.height() / 5);
    int ink = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            ink += picture.pixel(x, y) != picture.pixel(0, 0);
    return ink;
}

} // namespace

class RunClockTest : public QObject
{
    Q_OBJECT
private slots:
    void showsErrorsAtOnce()
    {
        Bench bench;
        bench.at(10.2);
        bench.press("e");
        QCOMPARE(bench.errors(), 1);
        bench.press("3");
        QCOMPARE(bench.errors(), 4);
        QTest::keyClick(&bench.clock, Qt::Key_Backspace);
        QCOMPARE(bench.errors(), 1);
        QCOMPARE(bench.clock.summary().erroredSeconds, 1);
        QVERIFY2(bench.told().contains("Bit errors 1 "), qPrintable(bench.told()));
    }

    /// Another name, or another description each second, would be read out each second.
    void whatIsLeftIsToldOnceAMinuteAndAtWhatHappens()
    {
        Bench bench;
        const auto told = [&bench] { return bench.clock.accessibleDescription(); };
        const QString begun = told();
        QVERIFY2(begun.startsWith("15:00 left of 15:00; started at 09:15:00. "), qPrintable(begun));
        bench.at(30);
        QTest::qWait(600);
        QCOMPARE(told(), begun);
        bench.at(65);
        QTRY_VERIFY2(told().startsWith("13:55 left of 15:00"), qPrintable(told()));
        bench.at(70);
        QTest::qWait(600);
        QVERIFY2(told().startsWith("13:55 left of 15:00"), qPrintable(told()));
        bench.press("e");
        QVERIFY2(told().startsWith("13:50 left of 15:00"), qPrintable(told()));
        QVERIFY(told().contains("Bit errors 1 "));
        QCOMPARE(bench.clock.accessibleName(), "Run clock");
    }

    void errorsOfTheSecondOfAStopAreKept()
    {
        Bench bench;
        bench.at(300.4);
        bench.press("5x");
        QCOMPARE(bench.errors(), 5);
        bench.at(400);
        QCOMPARE(bench.errors(), 5);
        QCOMPARE(bench.clock.log().seconds(bench.now).size(), 300u);
    }

    void aKeyHeldDownIsOneKey()
    {
        Bench bench;
        bench.at(10);
        QTest::keyPress(&bench.clock, Qt::Key_E);
        for (int i = 0; i < 20; ++i) {
            QKeyEvent again(QEvent::KeyPress, Qt::Key_E, Qt::NoModifier, "e", true);
            QApplication::sendEvent(&bench.clock, &again);
        }
        QCOMPARE(bench.errors(), 1);
    }

    void aStopIsTakenBackWhileThereIsTime()
    {
        Bench bench;
        bench.at(300);
        bench.press("x");
        QVERIFY(bench.told().contains("X goes on"));
        bench.at(310);
        bench.press("x");
        QVERIFY(!bench.clock.log().stoppedEarly());
        QCOMPARE(bench.clock.clockText(), "9:50");
    }

    void aStoppedRunNeverBecomesAWholeOne()
    {
        Bench bench;
        bench.at(300);
        bench.press("x");
        bench.at(1200);
        QTRY_VERIFY2(bench.told().contains("does not count"), qPrintable(bench.told()));
        bench.press("x");
        QVERIFY(bench.clock.log().stoppedEarly());
        QCOMPARE(bench.clock.log().elapsed(bench.now), 300);
        QCOMPARE(bench.clock.log().ended(bench.now), start.plusSeconds(300));
    }

    void theLastSecondsAreProvisionalUntilTheRunIsOver()
    {
        Bench bench;
        bench.at(895.1);
        bench.press("s");
        bench.at(899);
        QCOMPARE(bench.clock.summary().provisionalSeconds, 4);
        bench.press("e"); // makes it say anew what it shows
        QVERIFY2(bench.told().contains("last 4 s provisional"), qPrintable(bench.told()));
        bench.at(900);
        QTRY_VERIFY(bench.told().contains("TIME IS UP"));
        QVERIFY2(!bench.told().contains("provisional"), qPrintable(bench.told()));
    }

    void timeOutOfSyncProvesNothing()
    {
        Bench bench;
        bench.at(100);
        bench.press("s");
        bench.at(400.5);
        bench.press("s");
        bench.at(600);
        QCOMPARE(bench.clock.sentence(), "no error in 4:59: BER below 1.6e-7 with 95 % "
                                         "confidence; 301 s out of synchronisation are left out; "
                                         "1e-7 is not proved yet: 2:50 more without an error");
    }

    void theEndIsSeenAndTold()
    {
        Bench bench;
        QSignalSpy over(&bench.clock, &RunClock::over);
        bench.at(899.9);
        QTest::qWait(600);
        QCOMPARE(over.size(), 0);
        bench.at(900.1);
        QTRY_COMPARE(over.size(), 1);
        // It flashes, and rests at last.
        QList<QImage> seen;
        for (int i = 0; i < 40 && (seen.size() < 3 || i < 30); ++i) {
            const QImage picture = bench.clock.grab().toImage();
            if (!seen.contains(picture))
                seen << picture;
            QTest::qWait(100);
        }
        QVERIFY2(seen.size() >= 2, "nothing flashed");
        QCOMPARE(over.size(), 1);
        QVERIFY(bench.told().contains("TIME IS UP"));
    }

    void aRunThatEndedUnwatchedIsOverWithoutNoise()
    {
        Bench bench;
        bench.at(2000);
        QSignalSpy over(&bench.clock, &RunClock::over);
        bench.clock.setLog(RunLog::fromJson(RunLog(start, 900).toJson()));
        QTest::qWait(600);
        QCOMPARE(over.size(), 0);
        QVERIFY(bench.told().contains("TIME IS UP"));
        bench.press("e"); // too late
        QCOMPARE(bench.errors(), 0);
    }

    void theDraftHoldsTheWholeRun()
    {
        RunLog log(start.plusSeconds(0.25), 900);
        log.addErrors(start.plusSeconds(20), 7);
        log.toggleSync(start.plusSeconds(30));
        log.toggleSync(start.plusSeconds(33));
        log.stop(start.plusSeconds(60.5));
        QCOMPARE(RunLog::fromJson(log.toJson()), log);
        const Moment later = start.plusSeconds(500);
        QCOMPARE(RunLog::fromJson(log.toJson()).seconds(later), log.seconds(later));
    }

    /// Seconds that are not run yet are no error-free ones: there the strip is empty.
    void timeThatIsNotRunIsEmptyOnTheScreen()
    {
        Bench bench;
        bench.clock.resize(900, 500);
        QCOMPARE(inkOfTheLastThird(bench.clock), 0);
        bench.at(300);
        QCOMPARE(inkOfTheLastThird(bench.clock), 0);
        bench.at(899);
        QVERIFY(inkOfTheLastThird(bench.clock) > 100); // the scale
        bench.clock.setLog(RunLog(start, 900));
        bench.at(301);
        bench.press("x");
        bench.at(899);
        QCOMPARE(inkOfTheLastThird(bench.clock), 0);
    }

    /// However much there is to say, no line lies over another: the picture of a wide clock and
    /// that of one so narrow that lines wrap both keep free rows between the words.
    void longLinesWrapAndDoNotOverlap()
    {
        Bench bench;
        bench.at(100);
        bench.press("s");
        bench.at(130);
        bench.press("9s");
        bench.at(137);
        const QSize narrow = bench.clock.minimumSizeHint();
        const int many = linesOfWords(bench.clock, narrow);
        const int few = linesOfWords(bench.clock, {3 * narrow.width(), narrow.height()});
        QVERIFY2(many > few, qPrintable(QString("%1 %2").arg(many).arg(few)));
    }
};

QTEST_MAIN(RunClockTest)
#include "RunClockTest.moc"
