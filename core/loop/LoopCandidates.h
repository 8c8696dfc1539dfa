#pragma once
// The ways in which a record of a pair is usually wrong, each fitted to what was measured on it.
// Used by MeasuredLoop; of no use alone.

#include "core/loop/MeasuredLoop.h"

namespace loopwright {

/// Squared differences between measurement and prediction, each in its tolerance, summed.
double loopMisfit(const LoopMakeup &makeup, const MeasuredLoop &measured, const LimitSet &limits);
/// Difference in ohm that the model and the meter explain.
double resistanceTolerance(double predictedOhm, const LimitSet &limits);

/// The best candidate of each cause that applies to this make-up, in no order.
std::vector<LoopCandidate> loopCandidates(const LoopMakeup &makeup, const MeasuredLoop &measured,
                                          const LimitSet &limits);

} // namespace loopwright
