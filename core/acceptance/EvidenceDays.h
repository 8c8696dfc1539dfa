#pragma once
// What the reports say of an order's evidence: the day on which it was complete, and on how many
// visits it was made.

#include "core/acceptance/Decision.h"
#include "core/acceptance/DecisionInput.h"

namespace loopwright {

struct EvidenceDays
{
    QDate newest;   ///< local day of what was done last, on site or by exception; invalid: nothing
    int visits = 0; ///< also one whose readings were taken anew later, for it was made in vain
};
/// Of what stands and was recorded before the order ended.
EvidenceDays evidenceDays(const DecisionInput &input);

/// Of an order that was cancelled there is none, nor of one that is not accepted. Where nothing was
/// to be done on site it is the day on which the order was taken in.
QDate acceptanceDay(OrderStatus status, OrderOutcome outcome, const EvidenceDays &days,
                    QDate takenOn);

} // namespace loopwright
