#pragma once
// Keeping the board in step with what it is derived from, within the transaction that changes it.

#include "app/actions/Records.h"
#include "core/acceptance/Judge.h"
#include "core/history/Event.h"
#include "db/BoardStore.h"
#include "db/OrderStore.h"

namespace loopwright {

/// What this transaction says in its event, which is not in the records yet.
struct PendingEvent
{
    std::vector<OrderChange> changes = {};
    QStringList bySupervisor = {};
    QStringList afterEnd = {};  ///< ids of facts that came when the order was no longer open
    QJsonObject takesBack = {}; ///< the detail of an event that takes changes back
};

/// What the board shows of an order, and under which pairs others must find its hazards.
struct DerivedState
{
    OrderState state;
    QStringList hazardPairs;
    std::vector<Text> hazards; ///< of the pair and the premises that nobody closed
};
Result<DerivedState> derivedState(const Database &database, const StoredOrder &stored,
                                  const LimitSet &limits, const PendingEvent &pending = {});
/// The same of an order that was judged already.
Result<DerivedState> derivedState(const Database &database, const StoredOrder &stored,
                                  const DecisionInput &input, const Judged &judged);

/// Decides the order as it stands in the transaction and keeps stage, outcome and reason for the
/// board. Tells the hazards that nobody closed.
Result<std::vector<Text>> refreshState(Records &records, Transaction &transaction,
                                       const QString &orderNumber,
                                       const PendingEvent &pending = {});
/// The same of one that was read already, as it is in the transaction.
Result<std::vector<Text>> refreshState(Records &records, Transaction &transaction,
                                       const StoredOrder &stored, const PendingEvent &pending = {});
/// What refreshState() is going to ask, for Connection::foresee.
void askForState(Records &records, const StoredOrder &stored);

/// Something was claimed or released: every held order that can have all that it waits for claims
/// it, the others tell what they wait for. Adds an event for each; returns the numbers of those
/// that are held no longer.
Result<QStringList> claimForHeldOrders(Records &records, Transaction &transaction,
                                       std::vector<Event> &events);
/// A held order says what it waits for as it is now. Adds an event for each that waits for
/// something else.
Result<void> tellHeldOrders(Records &records, Transaction &transaction, std::vector<Event> &events);
/// That a held order waits for something else: nobody did anything with it.
inline const QString stillHeldKind = QStringLiteral("order_still_held");

/// Every open order whose evidence names the instrument is decided anew.
Result<void> refreshOrdersUsing(Records &records, Transaction &transaction,
                                const QString &instrument);

/// Visits and self-tests among the facts were recorded or voided: the other orders at the premises
/// that have facts of those days are decided anew.
Result<void> refreshOrdersOnVisits(Records &records, Transaction &transaction,
                                   const ServiceOrder &order, const std::vector<Fact> &facts);

/// Safety cards or closings of hazards among the facts: the other open orders on the pair and at
/// the premises are decided anew if a hazard concerns them.
Result<void> refreshOrdersConcerned(Records &records, Transaction &transaction,
                                    const ServiceOrder &order, const std::vector<Fact> &facts,
                                    const PendingEvent &pending);
/// The same, if others find a hazard of this order, or how one was closed: what stations say of it
/// was delivered or settled.
Result<void> refreshOrdersOfHazards(Records &records, Transaction &transaction,
                                    const ServiceOrder &order);

/// Every open order is decided anew, by the limit set `version`.
Result<void> refreshOpenOrders(Records &records, Transaction &transaction, const QString &version);

} // namespace loopwright
