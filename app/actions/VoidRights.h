#pragma once
// Who may strike out what was recorded: his own while the visit or the day lasts, anything else a
// supervisor.

#include "app/actions/Acting.h"

namespace loopwright {

/// As allow(). What was never there is refused later, with its reason. `corrected`: another card
/// takes the place of one with a hazard, which stays open all the same.
Result<void> allowVoid(Records &records, const QString &factId, bool corrected);

} // namespace loopwright
