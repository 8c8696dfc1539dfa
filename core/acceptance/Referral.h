#pragma once
// Whether an order waits on somebody else, and to whom a hazard was told.

#include "core/acceptance/Fact.h"

namespace loopwright {

/// The newest referral that is not struck out, as long as nobody came to the premises or measured
/// anything on the line since; null if there is none.
const Fact *standingReferral(const std::vector<Fact> &facts);

/// The referral by which others know of a hazard that was read at that moment: the newest since
/// then to the power utility, else the newest since then; null if there is none. `standing` by
/// time.
const Fact *hazardReferral(const std::vector<const Fact *> &standing, const Moment &readAt);

} // namespace loopwright
