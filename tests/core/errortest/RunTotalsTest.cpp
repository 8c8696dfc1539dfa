#include "core/errortest/RunTotals.h"

#include "core/errortest/G821.h"

#include <QTest>

#include <random>

using namespace loopwright;

namespace {

using Total = std::optional<qint64>;

RunFact totalsOf(Total bitErrors, Total errored, Total severe, Total losses, qint64 rate = 64000)
{
    RunFact run;
    run.channels = {Channel::B1, Channel::B2};
    run.rate = rate;
    run.started = *Moment::parse(u"2026-03-04T09:15:00-06:00");
    run.ended = *Moment::parse(u"2026-03-04T09:30:00-06:00");
    run.bitErrors = bitErrors;
    run.erroredSeconds = errored;
    run.severelyErroredSeconds = severe;
    run.syncLosses = losses;
    return run;
}

} // namespace

Q_DECLARE_METATYPE(RunFact)

class RunTotalsTest : public QObject
{
    Q_OBJECT

private slots:
    void contradictions_data()
    {
        QTest::addColumn<RunFact>("run");
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("what");
        const auto row = [](const char *name, const RunFact &run, const char *key,
                            const char *what = "") {
            QTest::newRow(name) << run << QString(key) << QString(what);
        };
        const auto listed = [](RunFact run, SecondList seconds) {
            run.seconds = std::move(seconds);
            return run;
        };
        row("the totals of the seconds", listed(totalsOf(3, 2, 0, 0), {0, 1, 2}), "");
        row("losses within one second", listed(totalsOf({}, {}, {}, 2), {0, std::nullopt}), "");
        row("other bit errors than the seconds'", listed(totalsOf(5, {}, {}, {}), {0, 1, 2}),
            "bit_errors", "5 bit errors recorded, and the seconds give 3");
        row("other errored seconds", listed(totalsOf({}, 1, {}, {}), {0, 1, 2}), "errored_seconds",
            "1 errored second recorded, and the seconds give 2");
        row("a loss that was not counted", listed(totalsOf({}, {}, {}, 0), {0, std::nullopt}),
            "sync_losses", "0 losses of synchronisation recorded, and the seconds give 1");
        row("a loss in no second", listed(totalsOf({}, {}, {}, 1), {0, 0}), "sync_losses",
            "1 loss of synchronisation recorded, and the seconds give 0");
        row("clean", totalsOf(0, 0, 0, 0), "");
        row("each error in a second of its own", totalsOf(5, 5, 0, 0), "");
        row("errored seconds without an error", totalsOf(0, 9, 0, 0), "errored_seconds",
            "0 bit errors cannot make 9 errored seconds without a loss of synchronisation");
        row("more errored seconds than errors", totalsOf(2, 9, 0, 0), "errored_seconds",
            "2 bit errors cannot make 9 errored seconds without a loss of synchronisation");
        row("one error, two seconds", totalsOf(1, 2, {}, 0), "errored_seconds",
            "1 bit error cannot make 2 errored seconds without a loss of synchronisation");
        row("with a loss of synchronisation", totalsOf(2, 9, 9, 1), "");
        row("losses not recorded", totalsOf(2, 9, 0, {}), "");
        row("errors in no second", totalsOf(5, 0, 0, 0), "errored_seconds",
            "5 bit errors cannot come without an errored second");
        row("errors in no second, losses not recorded", totalsOf(5, 0, {}, {}), "errored_seconds",
            "5 bit errors cannot come without an errored second");
        row("errored seconds not recorded", totalsOf(5, {}, 0, 0), "");
        row("nine severe seconds' worth in none", totalsOf(639, 0, 0, 0), "errored_seconds",
            "639 bit errors cannot come without an errored second");
        row("ten severe seconds' worth, unavailable", totalsOf(640, 0, 0, 0), "");
        row("the same at 56 kbit/s", totalsOf(560, 0, 0, 0, 56000), "");
        row("unavailable by a loss of synchronisation", totalsOf(5, 0, 0, 1), "");
        row("severe at its least", totalsOf(128, 2, 2, 0), "");
        row("too few errors for severe seconds", totalsOf(127, 2, 2, 0), "severely_errored_seconds",
            "127 bit errors cannot make 2 severely errored seconds without a loss of "
            "synchronisation");
        row("severe alone recorded", totalsOf(63, {}, 1, 0), "severely_errored_seconds",
            "63 bit errors cannot make 1 severely errored second without a loss of "
            "synchronisation");
        row("severe at 56 kbit/s", totalsOf(56, 1, 1, 0, 56000), "");
        row("severe with a loss of synchronisation", totalsOf(0, 2, 2, 1), "");
        row("severe that are not errored", totalsOf(500, 2, 3, 0), "severely_errored_seconds",
            "3 severely errored seconds cannot be among 2 errored seconds");
        row("every bit in error", totalsOf(900 * 64000, 0, 0, 0), "");
        row("more errors than bits", totalsOf(900 * 64000 + 1, 0, 0, 0), "bit_errors",
            "57600001 bit errors cannot lie in 900 seconds of 64000 bit/s");
    }
    void contradictions()
    {
        QFETCH(RunFact, run);
        QFETCH(QString, key);
        QFETCH(QString, what);
        const auto found = contradictionIn(run);
        QCOMPARE(found ? QString(found->key) : QString(), key);
        QCOMPARE(found ? found->what.english() : QString(), what);
    }

    /// Totals of seconds that were really counted never contradict each other.
    void whatWasCountedIsPossible()
    {
        std::mt19937 random(11);
        for (int round = 0; round < 3000; ++round) {
            const qint64 rate = round % 3 == 0 ? 56000 : 64000;
            SecondList seconds;
            for (int stretch = 0; stretch < 12; ++stretch) {
                const int kind = int(random() % 5);
                for (unsigned i = random() % 16; i > 0; --i)
                    seconds.push_back(kind == 0   ? Second(std::nullopt)
                                      : kind == 1 ? Second(qint64(random() % 3))
                                      : kind == 2 ? Second(severelyErroredFrom(rate))
                                      : kind == 3 ? Second(severelyErroredFrom(rate) - 1)
                                                  : Second(0));
            }
            const ErrorSummary sum = evaluateSeconds(seconds, rate);
            RunFact run = totalsOf(sum.bitErrors, sum.erroredSeconds, sum.severelyErroredSeconds,
                                   sum.syncLosses, rate);
            run.ended = run.started.plusSeconds(double(seconds.size()));
            for (const bool listed : {false, true}) {
                if (listed)
                    run.seconds = seconds;
                const auto found = contradictionIn(run);
                QVERIFY2(!found, found ? qPrintable(found->what.english()) : "");
            }
        }
    }
};

QTEST_APPLESS_MAIN(RunTotalsTest)
#include "RunTotalsTest.moc"
