#include "core/errortest/RunEvaluation.h"

#include <QTest>

using namespace loopwright;

namespace {

RunFact quarterOfAnHour()
{
    RunFact run;
    run.channels = {Channel::B1, Channel::B2};
    run.started = *Moment::parse(u"2026-03-04T09:15:00-06:00");
    run.ended = *Moment::parse(u"2026-03-04T09:30:00-06:00");
    return run;
}

} // namespace

class RunEvaluationTest : public QObject
{
    Q_OBJECT
private slots:
    void evaluatesSeconds()
    {
        RunFact run = quarterOfAnHour();
        run.seconds = SecondList(900, Second(0));
        (*run.seconds)[100] = 3;
        (*run.seconds)[700] = std::nullopt;
        const RunEvaluation evaluation = evaluateRun(run, 0.95);
        QVERIFY(evaluation.fromSeconds);
        QVERIFY(!evaluation.stoppedEarly && !evaluation.clockBreak);
        QVERIFY(evaluation.notRecorded.isEmpty());
        QCOMPARE(evaluation.durationSeconds, 900.0);
        QCOMPARE(evaluation.summary.erroredSeconds, 2);
        QCOMPARE(evaluation.summary.severelyErroredSeconds, 1);
        QCOMPARE(evaluation.summary.syncLosses, 1);
        QCOMPARE(evaluation.summary.bits, 899 * 64000);
        QCOMPARE(evaluation.summary.bitErrors, 3);
        QCOMPARE(evaluation.summary.longestErrorFree, 599);
        QCOMPARE(evaluation.sentence, "3 errors in 14:59: BER below 1.4e-7 with 95 % confidence; 1 "
                                      "s out of synchronisation are left out");
    }

    void evaluatesTotals()
    {
        RunFact run = quarterOfAnHour();
        run.bitErrors = 0;
        run.erroredSeconds = 0;
        run.severelyErroredSeconds = 0;
        run.syncLosses = 0;
        const RunEvaluation evaluation = evaluateRun(run, 0.95);
        QVERIFY(!evaluation.fromSeconds);
        QVERIFY(!evaluation.stoppedEarly && !evaluation.clockBreak);
        QVERIFY(evaluation.notRecorded.isEmpty());
        QCOMPARE(evaluation.summary.seconds, 900);
        QCOMPARE(evaluation.summary.bits, 57'600'000);
        // check-values/ber-bounds.csv
        QVERIFY(std::abs(*evaluation.berUpper / 5.200924086e-8 - 1) < 1e-9);
        QCOMPARE(evaluation.sentence, "no error in 15:00: BER below 5.3e-8 with 95 % confidence");
    }

    void agreesWithItselfOverTotalsAndSeconds()
    {
        RunFact bySeconds = quarterOfAnHour();
        bySeconds.seconds = SecondList(900, Second(0));
        (*bySeconds.seconds)[5] = 64;
        (*bySeconds.seconds)[6] = 2;
        RunFact byTotals = quarterOfAnHour();
        byTotals.bitErrors = 66;
        byTotals.erroredSeconds = 2;
        byTotals.severelyErroredSeconds = 1;
        byTotals.syncLosses = 0;
        ErrorSummary seconds = evaluateRun(bySeconds, 0.95).summary;
        // what totals cannot tell
        seconds.longestErrorFree = seconds.worstSecond = 0;
        QCOMPARE(evaluateRun(byTotals, 0.95).summary, seconds);
    }

    void saysWhatWasNotRecorded_data()
    {
        QTest::addColumn<int>("bitErrors");
        QTest::addColumn<int>("erroredSeconds"); // -1: not typed
        QTest::addColumn<int>("severe");
        QTest::addColumn<int>("losses");
        QTest::addColumn<QStringList>("notRecorded");
        QTest::newRow("bit errors alone")
            << 0 << -1 << -1 << -1
            << QStringList{"sync_losses", "severely_errored_seconds", "errored_seconds"};
        QTest::newRow("clean and in sync") << 0 << -1 << -1 << 0 << QStringList{};
        QTest::newRow("errors") << 4 << -1 << -1 << 0
                                << QStringList{"severely_errored_seconds", "errored_seconds"};
        QTest::newRow("no errored second") << 0 << 0 << -1 << 0 << QStringList{};
        QTest::newRow("all") << 4 << 2 << 0 << 0 << QStringList{};
    }
    void saysWhatWasNotRecorded()
    {
        QFETCH(int, bitErrors);
        QFETCH(int, erroredSeconds);
        QFETCH(int, severe);
        QFETCH(int, losses);
        QFETCH(QStringList, notRecorded);
        const auto typed = [](int value) {
            return value < 0 ? std::nullopt : std::optional<qint64>(value);
        };
        RunFact run = quarterOfAnHour();
        run.bitErrors = bitErrors;
        run.erroredSeconds = typed(erroredSeconds);
        run.severelyErroredSeconds = typed(severe);
        run.syncLosses = typed(losses);
        QCOMPARE(evaluateRun(run, 0.95).notRecorded, notRecorded);
    }

    void tellsBreaks_data()
    {
        QTest::addColumn<int>("seconds");
        QTest::addColumn<bool>("stopped");
        QTest::addColumn<bool>("clockBreak");
        QTest::newRow("whole") << 900 << false << false;
        QTest::newRow("one short") << 899 << false << false;
        QTest::newRow("two short") << 898 << false << true;
        QTest::newRow("none") << 0 << false << true;
        QTest::newRow("stopped early") << 900 << true << false;
    }
    void tellsBreaks()
    {
        QFETCH(int, seconds);
        QFETCH(bool, stopped);
        RunFact run = quarterOfAnHour();
        run.seconds = SecondList(std::size_t(seconds), Second(0));
        run.stoppedEarly = stopped;
        QTEST(evaluateRun(run, 0.95).clockBreak, "clockBreak");
        QCOMPARE(evaluateRun(run, 0.95).stoppedEarly, stopped);
    }

    void takesRunsWithoutLength()
    {
        RunFact run = quarterOfAnHour();
        run.ended = run.started;
        run.bitErrors = 1;
        const RunEvaluation evaluation = evaluateRun(run, 0.95);
        QCOMPARE(evaluation.summary.seconds, 0);
        QVERIFY(!evaluation.berUpper);
        QCOMPARE(evaluation.sentence, "nothing compared yet");
    }
};

QTEST_APPLESS_MAIN(RunEvaluationTest)
#include "RunEvaluationTest.moc"
