#pragma once
// One order of a van joins the records of the office, in one transaction.

#include "app/actions/BundleAnswer.h"
#include "db/StationStore.h"

namespace loopwright {

struct Joining
{
    const BundledOrder &entry;
    PeerStation van;
    QString bundle;
    bool keep = false; ///< it stays out
    QJsonObject fork;  ///< where the van's log parts from what it told before; empty if nowhere
    QString place;     ///< in the file, for errors
};

/// Refused or BadInput with the code in the place: "broken_chain", "forked", "earlier_missing",
/// "unknown_order", "number_in_use".
Result<JoinedOrder> joinOrder(Records &records, const Joining &joining);

} // namespace loopwright
