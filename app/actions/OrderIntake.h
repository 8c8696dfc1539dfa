#pragma once
// Taking an order into the records, for the actions that take in one or many.

#include "app/actions/Records.h"
#include "core/acceptance/DecisionInput.h"
#include "core/history/Event.h"
#include "db/OrderStore.h"

namespace loopwright {

/// Takes the order in or changes it: puts, claims, holds, refreshes the board. `findings` gets the
/// conflicts; `event` is to be committed. `sameWires`: if the pair differs, only its name was
/// wrong, and what was measured on it counts.
struct TakenOrder
{
    bool held = false;
    Findings findings;
    Event event;
};
Result<TakenOrder> takeOrder(Records &records, Transaction &transaction, const ServiceOrder &order,
                             const std::optional<StoredOrder> &before, bool sameWires = false);

Finding conflictFinding(const Conflict &conflict);

} // namespace loopwright
