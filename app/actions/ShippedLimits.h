#pragma once
// The limit sets that come with the program, and the one in force.

#include "app/actions/Records.h"
#include "core/base/LimitSet.h"

namespace loopwright {

/// Every shipped set, oldest first; for work without records.
Result<std::vector<LimitSet>> shippedLimitSets();
/// The newest of them.
Result<LimitSet> shippedLimits();

/// Adds each shipped set that the database does not have yet. A set is never edited.
Result<void> bringShippedLimits(Records &records);
/// The set in force on the day of records.now().
Result<LimitSet> limitsInForce(Records &records);

} // namespace loopwright
