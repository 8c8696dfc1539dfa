#pragma once
// What the actions share: the events that they write, and keeping the board in step with what it is
// derived from.

#include "app/actions/Records.h"
#include "core/acceptance/Judge.h"
#include "core/history/Event.h"
#include "db/OrderStore.h"
#include "db/Transaction.h"

namespace loopwright {

Event registerEvent(const Records &records, const QString &kind, const QJsonObject &detail);
Event orderEvent(const Records &records, const ServiceOrder &order, const QString &kind,
                 const QJsonObject &detail);

/// The order of this number; NotFound in a sentence where there is none.
Result<StoredOrder> orderOf(const Database &database, const QString &number);

/// Usage where a reason that somebody gives is empty (then `needed` says so) or is not fit to be
/// recorded.
Result<void> checkReason(const QString &because, const QString &needed);

/// Decides the order as it stands in the transaction and keeps stage, outcome and reason for the
/// board. `pending` is the change of the order that this very transaction makes: its event is not
/// in the records yet.
Result<void> refreshState(Records &records, Transaction &transaction, const QString &orderNumber,
                          const std::vector<OrderChange> &pending = {});

/// Something was released: every held order that is held for it alone and can have it now, claims
/// it. Returns an event for each.
Result<std::vector<Event>> claimForHeldOrders(Records &records, Transaction &transaction);

/// Every open order whose evidence names the instrument decides anew.
Result<void> refreshOrdersUsing(Records &records, Transaction &transaction,
                                const QString &instrument);

/// Visits and self-tests among the facts were recorded or voided: the other orders at the premises
/// that have facts of those days decide anew.
Result<void> refreshOrdersOnVisits(Records &records, Transaction &transaction,
                                   const ServiceOrder &order, const std::vector<Fact> &facts);

/// Takes the order in or changes it: puts, claims, holds, refreshes the board. `findings` gets the
/// conflicts; `event` is to be committed.
struct TakenOrder
{
    bool held = false;
    Findings findings;
    Event event;
};
Result<TakenOrder> takeOrder(Records &records, Transaction &transaction, const ServiceOrder &order,
                             const std::optional<StoredOrder> &before);

/// What can be said of an order before it is taken in: the rules of its variant and the spelling of
/// its identifiers.
Findings identifierFindings(const ServiceOrder &order);
Finding conflictFinding(const Conflict &conflict);

} // namespace loopwright
