#include "core/errortest/RunEvaluation.h"

#include <cmath>

namespace loopwright {

namespace {

/// A list of seconds may fall this much short of the clock before it shows a break.
constexpr double clockTolerance = 1.0;

void evaluateFromSeconds(const RunFact &run, RunEvaluation &evaluation)
{
    G821 evaluator(run.bitsPerSecond());
    evaluator.push(*run.seconds);
    ErrorCounts counts = evaluator.counts();
    counts.syncLosses = std::max(counts.syncLosses, run.syncLosses.value_or(0));
    counts.provisionalSeconds = 0; // the run is over
    evaluation.fromSeconds = true;
    evaluation.summary = summarise(counts);
    evaluation.clockBreak =
        evaluation.durationSeconds - double(run.seconds->size()) > clockTolerance;
}

void evaluateFromTotals(const RunFact &run, RunEvaluation &evaluation)
{
    ErrorCounts counts;
    counts.seconds = counts.availableSeconds = qint64(std::floor(evaluation.durationSeconds));
    counts.bits = counts.availableBits = counts.seconds * run.bitsPerSecond();
    counts.bitErrors = counts.availableBitErrors = run.bitErrors.value_or(0);
    // No error and no loss of synchronisation leave no room for an errored second.
    const bool clean = run.bitErrors == 0 && run.syncLosses == 0;
    const auto take = [&](const char *key, std::optional<qint64> typed, bool inferred) {
        if (!typed && !inferred)
            evaluation.notRecorded << key;
        return typed.value_or(0);
    };
    counts.syncLosses = take("sync_losses", run.syncLosses, false);
    counts.severelyErroredSeconds = take("severely_errored_seconds", run.severelyErroredSeconds,
                                         clean || run.erroredSeconds == 0);
    counts.erroredSeconds =
        std::min(std::max(take("errored_seconds", run.erroredSeconds, clean),
                          counts.severelyErroredSeconds), // each of those is errored
                 counts.seconds);
    counts.severelyErroredSeconds = std::min(counts.severelyErroredSeconds, counts.seconds);
    counts.errorFreeSeconds = counts.availableSeconds - counts.erroredSeconds;
    counts.secondsWithErrors = counts.bitErrors > 0 ? counts.erroredSeconds : 0;
    evaluation.summary = summarise(counts);
}

} // namespace

RunEvaluation evaluateRun(const RunFact &run, double confidence)
{
    RunEvaluation evaluation;
    evaluation.durationSeconds = run.durationSeconds();
    evaluation.stoppedEarly = run.wasStoppedEarly();
    evaluation.confidence = confidence;
    if (run.seconds)
        evaluateFromSeconds(run, evaluation);
    else
        evaluateFromTotals(run, evaluation);
    const ErrorSummary &summary = evaluation.summary;
    if (summary.bits > 0)
        evaluation.berUpper =
            std::min(1.0, poissonUpper({summary.bitErrors, summary.bits, confidence}));
    evaluation.sentence = provenSentence(summary, run.bitsPerSecond(), confidence);
    return evaluation;
}

Text provenSentence(const ErrorSummary &summary, qint64 bitsPerSecond, double confidence)
{
    const Text proof =
        proofSentence(summary.bitErrors, summary.bits, summary.bits / bitsPerSecond, confidence);
    if (summary.outOfSyncSeconds == 0)
        return proof;
    return Text(QT_TRANSLATE_NOOP("core", "%1; %2 s out of synchronisation are left out"))
        .arg(proof)
        .arg(summary.outOfSyncSeconds);
}

} // namespace loopwright
