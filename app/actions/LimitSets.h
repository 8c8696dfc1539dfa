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

/// Adds each shipped set that the database does not have yet. A set is never edited.
Result<void> bringShippedLimits(Records &records);
/// The set of this version, as a decision names it. NotFound where there is none.
Result<LimitSet> limitSet(Records &records, const QString &version);
/// Adds a set, the office's own or a shipped one; false where the very same is there. BadInput
/// where its version is there with other limits, or a limit cannot be one. Where it is in force
/// today, every open order is decided anew for the board; decisions made before keep theirs.
Result<bool> addLimitSet(Records &records, const LimitSet &set);
/// The set in force on the day of records.now().
Result<LimitSet> limitsInForce(Records &records);
/// A set comes into force by its date, when nobody acts: decides every open order anew for the
/// board where it was decided by another set.
Result<void> followLimits(Records &records);
/// The set that an order is judged by: the one in force, and once it is completed the one by which
/// it was accepted. Limits that come later do not undo finished work.
Result<LimitSet> limitsFor(Records &records, const StoredOrder &stored);

} // namespace loopwright
