#pragma once
// One order of a van joins the records of the office, in one transaction.

#include "app/actions/BundleAnswer.h"
#include "app/actions/Joining.h"

namespace loopwright {

/// Refused or BadInput with the code in the place: "broken_chain", "forked", "earlier_missing",
/// "unknown_order", "number_in_use".
Result<JoinedOrder> joinOrder(Records &records, const Joining &joining);

} // namespace loopwright
