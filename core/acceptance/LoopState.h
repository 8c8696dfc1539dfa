#pragma once
// What is known of the pair: the newest make-up and the newest figures that were measured.

#include "core/acceptance/DecisionInput.h"
#include "core/base/LimitSet.h"
#include "core/loop/LoopComparison.h"

namespace loopwright {

struct LoopState
{
    std::optional<LoopMakeup> makeup;
    MeasuredLoop measured;
};

/// Of the facts that are not voided and were not made old by a change of the pair. A loss without a
/// frequency was measured where the limits judge it.
LoopState loopState(const DecisionInput &input, const LimitSet &limits);

} // namespace loopwright
