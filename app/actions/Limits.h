#pragma once
// The limits that are shipped with the program, for work without records.

#include "core/base/LimitSet.h"

namespace loopwright {

/// Every shipped set, oldest first.
Result<std::vector<LimitSet>> shippedLimitSets();
/// The newest of them.
Result<LimitSet> shippedLimits();

} // namespace loopwright
