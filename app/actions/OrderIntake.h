#pragma once
// Taking an order into the records, for the actions that take in one or many.

#include "app/actions/Records.h"
#include "core/acceptance/DecisionInput.h"
#include "core/history/Event.h"
#include "db/OrderStore.h"

namespace loopwright {

/// By the rules of the registered offices.
Result<OrderReading> readFields(Records &records, const OrderFields &fields);

/// Columns whose text differs, each with both texts.
using ColumnChanges = QMap<QString, std::pair<QString, QString>>;
QJsonObject toJson(const ColumnChanges &changes); ///< {"COLUMN":[before, now]}

/// The order by which the circuit works; Refused if it is not in service.
Result<ServiceOrder> orderInService(const Database &database, const QString &circuit);

/// Why the order cannot be the repair that it is, or is no longer: empty if nothing is amiss. A
/// repair is of a circuit in service and its kind of line, and changes nothing of the line; an
/// order is not made a repair, nor a repair another order.
Result<Text> repairTrouble(const Database &database, const ServiceOrder &order,
                           const std::optional<StoredOrder> &before);

/// Refused with repairTrouble(). Takes the order in or changes it: puts, claims, holds, refreshes
/// the board. The first day that the customer was told is kept when there is another. `findings`
/// gets the conflicts; `event` is to be committed. `sameWires`: if the pair differs, only its name
/// was wrong, and what was measured on it counts. `names`: of an order that was made elsewhere.
struct TakenOrder
{
    bool held = false;
    Findings findings;
    ColumnChanges changes; ///< of an order that was there
    Event event;
};
Result<TakenOrder> takeOrder(Records &records, Transaction &transaction, const ServiceOrder &order,
                             const std::optional<StoredOrder> &before, bool sameWires = false,
                             const TravelNames &names = {});

Finding conflictFinding(const Conflict &conflict);

} // namespace loopwright
