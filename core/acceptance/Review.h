#pragma once
// What is said of an entry while it is typed, before it is recorded: a hazard, a figure beyond its
// limit or of a poor class, what a cause means and what to check first. Nothing here decides.

#include "core/acceptance/DecisionInput.h"
#include "core/acceptance/Need.h"
#include "core/base/LimitSet.h"

namespace loopwright {

/// `typed` holds what can be read of the entry so far, under the keys of the need's fields
/// ("ac_v.tip_ground" in an object "ac_v"); what is missing or no value is passed over. Each
/// finding names its field; codes: `hazard`, `foreign_battery`, `contradiction`, `over_limit`,
/// `poor` and `not_seen` (errors), `trouble`, `supervisor` and `marginal` (warnings), `good`,
/// `cause`, `cause_location`, `first_check` (notes).
Findings review(const Need &need, const QJsonObject &typed, const DecisionInput &input,
                const LimitSet &limits);

} // namespace loopwright
