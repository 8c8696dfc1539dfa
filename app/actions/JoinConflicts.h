#pragma once
// What a van that came home says otherwise than others, drawn as conflicts. What a conflict says,
// and whether it stands, is made of what all of them told, and of nobody's turn.

#include "app/actions/BundleOrders.h"
#include "app/actions/Joining.h"

namespace loopwright {

/// `parts` gets the facts that are taken in on the way.
Result<void> drawConflicts(Records &records, Transaction &transaction, const Drawing &drawing,
                           AddedParts &parts);

} // namespace loopwright
