#pragma once
// Whether an order waits on somebody else.

#include "core/acceptance/Fact.h"

namespace loopwright {

/// The newest referral that is not struck out, as long as nobody came to the premises or measured
/// anything on the line since; null if there is none.
const Fact *standingReferral(const std::vector<Fact> &facts);

} // namespace loopwright
