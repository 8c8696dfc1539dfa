#pragma once
// What a recorded run shows and proves. No limit is applied here: comparing is for the decision.

#include "core/errortest/Bounds.h"
#include "core/errortest/G821.h"
#include "core/errortest/RunFact.h"

#include <QStringList>

namespace loopwright {

struct RunEvaluation
{
    /// By the G.821 method from the seconds. From totals: what was typed, over the whole seconds of
    /// the run, all of them taken as available.
    ErrorSummary summary;
    bool fromSeconds = false;
    /// Totals that were not typed and cannot be inferred ("errored_seconds", …); their counts in
    /// the summary are 0 and mean nothing.
    QStringList notRecorded;

    double durationSeconds = 0; ///< from start to end by the clock
    bool stoppedEarly = false;
    bool clockBreak = false; ///< the seconds fall more than one short of the clock

    double confidence = usualConfidence;
    std::optional<double> berUpper; ///< Poisson, at that confidence, at most 1; none without bits
    Text sentence;                  ///< what the run proves, in words
};

/// `confidence` between 0 and 1, both excluded.
RunEvaluation evaluateRun(const RunFact &run, double confidence);
/// What these counts prove, in words: the time is that of the bits that were compared.
Text provenSentence(const ErrorSummary &summary, qint64 bitsPerSecond, double confidence);

} // namespace loopwright
