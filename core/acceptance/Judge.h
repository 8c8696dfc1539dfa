#pragma once
// The one function that accepts. It is pure: the same input gives the same decision, byte for byte,
// forever; so the input is stored with the decision and can be decided again. It knows no clock,
// no person and no visit that is going on: that is the plan's (Plan.h).

#include "core/acceptance/Judged.h"

namespace loopwright {

/// `limits` is the set whose version the input names. The input must outlive the standings.
Judged judge(const DecisionInput &input, const LimitSet &limits);
/// The decision alone.
Decision decide(const DecisionInput &input, const LimitSet &limits);

/// Where an order stands: its first open station, Certificate when only that is left, Done at the
/// end. `finished`: a certificate was issued, or the order was completed or cancelled.
Stage stageOf(const Decision &decision, const DecisionInput &input, bool finished);

} // namespace loopwright
