#pragma once
// Limit sets: those that come with the program, those of the office, and the one in force.

#include "app/actions/Records.h"
#include "core/base/LimitSet.h"

namespace loopwright {

struct StoredOrder;

/// Every shipped set, oldest first; for work without records.
Result<std::vector<LimitSet>> shippedLimitSets();
/// The newest of them.
Result<LimitSet> shippedLimits();

/// The set of this version, as a decision names it. NotFound if there is none.
Result<LimitSet> limitSet(Records &records, const QString &version);
/// The set in force on the day of records.now().
Result<LimitSet> limitsInForce(Records &records);
/// The set that an order is judged by: the one in force, and once it is completed the one by which
/// it was accepted. Limits that come later do not undo finished work.
Result<LimitSet> limitsFor(Records &records, const StoredOrder &stored);

} // namespace loopwright
