#pragma once
// A fact that is there already: told by one station more, or with another content.

#include "app/actions/BundleOrders.h"
#include "app/actions/Joining.h"

namespace loopwright {

/// Who tells what of each id, and a conflict where the contents differ; of two orders, one on each.
/// A safety card that differs is taken in at once, under an id of its own, for hazards are read
/// from all cards.
Result<void> joinFacts(Records &records, Transaction &transaction, const Drawing &drawing,
                       AddedParts &parts);

} // namespace loopwright
