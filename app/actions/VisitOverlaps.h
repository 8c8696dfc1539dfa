#pragma once
// One installer is at one place at a time: visits that overlap are told as they are recorded.

#include "app/actions/RecordReport.h"
#include "db/OrderStore.h"

namespace loopwright {

/// Tells of each visit among the added facts, if it is over, which others of its installer it
/// overlaps: in this order, or in one at other premises. Warning `visits_overlap`.
Result<void> tellOverlaps(const Database &database, const StoredOrder &stored,
                          RecordReport &report);

} // namespace loopwright
