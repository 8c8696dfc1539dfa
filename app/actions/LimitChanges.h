#pragma once
// Taking limit sets in, and what follows for the board. Opening the records does neither, for a
// program opens several connections: a program takes the shipped sets in once, when it starts, and
// who asks for the board has it decided anew on the day that another set came into force.

#include "app/actions/Records.h"
#include "core/base/LimitSet.h"

namespace loopwright {

/// Adds each shipped set that the database does not have yet: all of them to a new one, afterwards
/// those of a newer program. Both faces do it when they start. A set is never edited.
Result<void> bringShippedLimits(Records &records);
/// Adds a set, the office's own or a shipped one; false if the same one is there. BadInput
/// if its version is there with other limits, a limit is not valid, or one has another value than
/// the newest shipped set and still names the published text that this one names. If it is in force
/// today, every open order is decided anew for the board; decisions made before keep theirs.
Result<bool> addLimitSet(Records &records, const LimitSet &set);
/// Whether nothing is to be done by the two others: every shipped set is there, and the board was
/// decided by the one in force.
Result<bool> limitsAreCurrent(Records &records);
/// A set comes into force by its date, when nobody acts: decides every open order anew for the
/// board if it was decided by another set. Records that are open for reading alone stay as they
/// were decided.
Result<void> followLimits(Records &records);

} // namespace loopwright
