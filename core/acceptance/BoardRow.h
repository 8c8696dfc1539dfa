#pragma once
// One order as the board shows it: store, model and command line share the value.

#include "core/acceptance/Decision.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

struct BoardRow
{
    QString order, circuit, customer, premises, office, installer;
    QString reason; ///< why it is not accepted yet; empty if it is
    LineKind kind = LineKind::Bri;
    Stage stage = stageAt(Station::Identifiers);
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QDate due;
    OrderStatus status = OrderStatus::Open;
    bool held = false;
    bool hazard = false; ///< one is open on its pair or at its premises
    int facts = 0;
    int runs = 0;

    QJsonObject toJson() const; ///< the contract's fields and more
};

} // namespace loopwright
