#pragma once
// Where the visit stands: who came when and has not left, and whether the safety card of the visit
// is made and clear. The visit is of all lines at the premises, the card of this pair alone.

#include "app/actions/Orders.h"

namespace loopwright {

/// The visit that is going on at `now`: the newest one without leaving that is recorded in the
/// order, or by the installer in another order at the premises. Nothing where none is.
std::optional<Visit> openVisit(const OrderView &view, const QString &installer, const Moment &now);

/// The newest card that counts, judged; nothing where none was made on the day of `now` or since
/// the open visit began.
std::optional<SafetyVerdict> safetyOfVisit(const OrderView &view, const QString &installer,
                                           const LimitSet &limits, const Moment &now);

/// "Also at these premises (F7): A-2001, analog, due 6 Mar 2026"; empty where there is none.
QString alsoHereText(const OrderView &view);
/// "analog, due 6 Mar 2026, at Safety"
QString lineText(const BoardRow &row);

} // namespace loopwright
