#pragma once
// The desk's plans: who goes where on which day, what waits on whom, and any other column of
// orders that are there. One or many orders at a time, all or none, each an event of its own; what
// was done can be undone by a further event.

#include "app/actions/OrderIntake.h"
#include "core/order/JobFacts.h"
#include "core/order/ServiceOrder.h"

#include <QJsonObject>

namespace loopwright {

/// Column to its new text; an empty one clears it.
struct PlanChange
{
    QString order;
    OrderFields values;
};

/// One order's columns as they were and as they are now.
struct PlanStep
{
    QString order;
    ColumnChanges columns;
};

struct PlanReport
{
    std::vector<PlanStep> changed; ///< what undoPlan takes back
    QStringList unchanged;         ///< orders that had these values already
    QStringList held;              ///< changed, but their identifiers are in error or taken now
    Findings findings;             ///< why they are held

    QJsonObject toJson() const; ///< {"changed":[…],"unchanged":[…],"held":[…],"findings":[…]}
};

/// Refused, naming each of the orders with its reason, if any of them is not open or would be
/// malformed; BadInput for a column that orders do not have, NotFound for an order that is not
/// there. Nothing is changed then. `sameWires` as in putOrder.
Result<PlanReport> changePlans(Records &records, const std::vector<PlanChange> &changes,
                               bool sameWires = false);

struct Assigning
{
    QStringList orders;
    QString installer;    ///< key of a registered person; empty: nobody any more
    QDate on = {};        ///< another due day; invalid: it stays
    QString because = {}; ///< why there is another
};
/// NotFound if there is no such person.
Result<PlanReport> assignOrders(Records &records, const Assigning &assigning);
/// To another day; the first one is kept.
Result<PlanReport> moveOrders(Records &records, const QStringList &orders, QDate on,
                              const QString &because);

/// Usage without a reason.
Result<PlanReport> holdOrders(Records &records, const QStringList &orders, WaitingOn waitingOn,
                              const QString &because);
/// Refused if one of them does not wait.
Result<PlanReport> resumeOrders(Records &records, const QStringList &orders);

/// Takes back what a report says was changed. Refused, naming the orders, if somebody changed one
/// of these columns since; nothing is changed then.
Result<PlanReport> undoPlan(Records &records, const std::vector<PlanStep> &steps);

} // namespace loopwright
