#pragma once
// How an entry of the job page stands.

#include "app/actions/Orders.h"
#include "app/desktop/widgets/SignLine.h"

namespace loopwright {

/// The entry itself says that something is not as it should be: a layer is down, a call or a
/// self-test failed, a voltage is a hazard.
bool hasFailed(const Fact &fact, const LimitSet &limits);
/// How an entry stands: its sign, and in words whether it counts or why not. What failed, or counts
/// and misses the limit, never bears the sign of what is done.
std::pair<Status, QString> standingOf(const FactView &entry, const OrderView &view);
/// "09:42", and the date before it where it is not `today`.
QString timeText(const Moment &moment, QDate today);

} // namespace loopwright
