#pragma once
// A measured resistance or loss against what the make-up predicts. If they disagree, the ways in
// which a record is usually wrong are tried one by one: each is fitted to what was measured, and
// the one that explains it best at the least stretch is named, with the others after it.

#include "core/loop/LoopCandidates.h"

namespace loopwright {

/// One figure beside its prediction.
struct LoopDifference
{
    Text name; ///< "DC resistance", "loss at 40000 Hz"
    QString unit;
    double measured = 0;
    double predicted = 0;
    double tolerance = 0; ///< difference that the model and the meter explain
    bool agrees = true;
    Text reason;
};

struct LoopComparison
{
    std::vector<LoopDifference> differences;
    bool agrees = true;
    std::vector<LoopCandidate> candidates; ///< best of each cause, most likely first; empty if
                                           ///< all agrees
    LoopCause mostLikely = LoopCause::AsRecorded;
    Text why; ///< one or two sentences for a person

    QJsonObject toJson() const;
};

/// Whether a temperature of the cable from -20 to 140 °F, tried by tens, brings every figure within
/// its tolerance: then the record need not be wrong. Nothing measured agrees, and so does a pair
/// with a repeater or carrier in it, of which the wires alone predict nothing.
bool agreesAtSomeTemperature(const LoopMakeup &makeup, const MeasuredLoop &measured,
                             const LimitSet &limits);

/// `measured` may hold nothing; then nothing differs. Without any figure off by more than its
/// tolerance the record stands; else the candidate with the least score, provided that it brings
/// every figure within tolerance. The scores' weights are a convention of this program.
LoopComparison compareLoop(const LoopMakeup &makeup, const MeasuredLoop &measured,
                           const LimitSet &limits);

} // namespace loopwright
