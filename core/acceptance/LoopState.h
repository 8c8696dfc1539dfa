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

/// Whether the make-up on record explains what was measured at no temperature of the cable: then
/// the measurement decides, and the record is to be mended. Of losses those of a basic-rate line at
/// the frequency of its limit speak.
bool isRecordWrong(const LoopState &state, LineKind kind, const LimitSet &limits);
/// The sentence for it.
extern const char *const recordIsWrongText;

} // namespace loopwright
