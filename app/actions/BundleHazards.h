#pragma once
// The hazards that a van must know of: of the pairs and premises of its orders, whichever order
// they were read for, and those that are open anywhere in their offices, for a van may go to
// another pair.

#include "app/actions/Records.h"

namespace loopwright {

/// For the registers of a bundle. `around`: orders that hold hazards of the pairs and premises of
/// those that go (HazardsAround); `offices`: of those that go.
Result<QJsonArray> hazardsGoing(const Database &database, const QStringList &around,
                                QStringList offices);
/// Takes them in, and decides anew what they concern. BadInput with its place.
Result<void> takeHazards(Records &records, Transaction &transaction, const QJsonObject &registers,
                         const QString &place);

} // namespace loopwright
