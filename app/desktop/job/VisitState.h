#pragma once
// Where the visit stands: who came when and has not left, and whether the safety card of the visit
// is made and clear.

#include "app/actions/Orders.h"

namespace loopwright {

/// Arrival of the visit that is going on at `now`: the newest one that says no leaving.
std::optional<Moment> openVisit(const OrderView &view, const Moment &now);

/// The newest card that counts, judged; nothing where none was made on the day of `now` or since
/// the open visit began.
std::optional<SafetyVerdict> safetyOfVisit(const OrderView &view, const LimitSet &limits,
                                           const Moment &now);

} // namespace loopwright
