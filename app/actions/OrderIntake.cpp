#include "app/actions/OrderIntake.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "core/history/Event.h"
#include "core/order/Claims.h"
#include "db/AssignmentStore.h"
#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/OfficeStore.h"

namespace loopwright {

namespace {

ColumnChanges differences(const ServiceOrder &before, const ServiceOrder &after)
{
    const OrderFields old = before.fields(), now = after.fields();
    ColumnChanges changes;
    for (const QString &column : old.keys() + now.keys())
        if (old.value(column) != now.value(column))
            changes.insert(column, {old.value(column), now.value(column)});
    return changes;
}

/// The order moved to other premises: it takes its visits along.
Result<void> refreshBothPremises(Records &records, Transaction &transaction,
                                 const ServiceOrder &before, const ServiceOrder &after)
{
    if (premisesKey(before.premises) == premisesKey(after.premises))
        return {};
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(transaction.database()).ofOrder(after.number));
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(records, transaction, before, facts));
    return refreshOrdersOnVisits(records, transaction, after, facts);
}

/// With the first day that the customer was told, if there is another now.
ServiceOrder withFirstDay(ServiceOrder order, const ServiceOrder &before)
{
    const QString was = before.dueDate.toString(Qt::ISODate);
    if (order.dueDate != before.dueDate && order.firstDueDate.isEmpty() &&
        before.firstDueDate.isEmpty())
        order.firstDueDate = was;
    return order;
}

std::vector<OrderChange> changesBetween(const ServiceOrder &before, const ServiceOrder &after,
                                        bool sameWires, const Moment &now)
{
    std::vector<OrderChange> changes;
    for (const ChangedWhat what : whatChanged(before, after, sameWires))
        changes.push_back({what, now});
    if (sameWires && !isSamePair(before.pair, after.pair))
        changes.push_back({std::nullopt, now, before.pair});
    return changes;
}

} // namespace

QJsonObject toJson(const ColumnChanges &changes)
{
    QJsonObject columns;
    for (auto it = changes.begin(); it != changes.end(); ++it)
        columns.insert(it.key(), QJsonArray{it->first, it->second});
    return columns;
}

Result<OrderReading> readFields(Records &records, const OrderFields &fields)
{
    const auto offices = OfficeStore(records.database()).all();
    if (!offices)
        return failure(offices.error());
    return readOrder(fields, [&offices](const QString &key) -> std::optional<QString> {
        for (const ServingOffice &office : *offices)
            if (office.key == key)
                return office.protocolVariant;
        return std::nullopt;
    });
}

namespace {

/// What of the line a repair would change, against what it was; empty if nothing.
Text lineTrouble(const ServiceOrder &before, const ServiceOrder &order)
{
    if (before.circuit != order.circuit)
        return QT_TRANSLATE_NOOP("core", "A repair stays with its circuit.");
    const bool same = whatChanged(before, order).empty() && before.b1 == order.b1 &&
                      before.b2 == order.b2 && before.d == order.d &&
                      before.dataRate == order.dataRate;
    return same ? Text()
                : Text(QT_TRANSLATE_NOOP("core", "A repair changes nothing of the line: pair, "
                                                 "numbers and services are changed by an order "
                                                 "of the type change."));
}

} // namespace

Result<ServiceOrder> orderInService(const Database &database, const QString &circuit)
{
    LOOPWRIGHT_ASSIGN(const auto working, OrderStore(database).workingOn(circuit));
    if (!working)
        return failure(ErrorCode::Refused,
                       QString("Circuit %1 is not in service: no order of it was completed, or the "
                               "last one disconnected it.")
                           .arg(circuit));
    return working->order;
}

Result<Text> repairTrouble(const Database &database, const ServiceOrder &order,
                           const std::optional<StoredOrder> &before)
{
    const bool repair = order.type == OrderType::Repair;
    if (before && repair != (before->order.type == OrderType::Repair))
        return Text(repair ? QT_TRANSLATE_NOOP("core", "An order is not made a repair afterwards.")
                           : QT_TRANSLATE_NOOP("core", "A repair stays a repair."));
    if (!repair)
        return Text();
    if (before && order.symptom.isEmpty() && !before->order.symptom.isEmpty())
        return Text(QT_TRANSLATE_NOOP("core", "A repair keeps its symptom."));
    if (before)
        return lineTrouble(before->order, order);
    const auto working = orderInService(database, order.circuit);
    if (!working && working.error().code == ErrorCode::Refused)
        return Text::message(working.error().message);
    if (!working)
        return failure(working.error());
    if (working->kind != order.kind || working->office != order.office)
        return Text(QT_TRANSLATE_NOOP("core", "Circuit %1 is of another kind of line or office."))
            .arg(order.circuit);
    return Text();
}

Result<TakenOrder> takeOrder(Records &records, Transaction &transaction, const ServiceOrder &wished,
                             const std::optional<StoredOrder> &before, bool sameWires,
                             const TravelNames &names)
{
    const ServiceOrder order = before ? withFirstDay(wished, before->order) : wished;
    if (!names.byOffice) {
        LOOPWRIGHT_ASSIGN(const auto trouble, repairTrouble(transaction.database(), order, before));
        if (!trouble.isEmpty())
            return failure(ErrorCode::Refused, trouble.english(), "order_type");
    }
    TakenOrder taken;
    LOOPWRIGHT_ASSIGN(const auto conflicts,
                      AssignmentStore(transaction.database()).conflictsOf(order));
    for (const Conflict &conflict : conflicts)
        taken.findings.push_back(conflictFinding(conflict));
    // Of a repair the numbers are assigned already, and nobody else's.
    taken.held = order.type != OrderType::Repair &&
                 (!conflicts.empty() || worst(checkOrderIdentifiers(order)) == Severity::Error);
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore::put(transaction, order, taken.held, names));
    transaction.database().connection().foresee([&] {
        (void)AssignmentStore::claim(transaction, order);
        (void)AssignmentStore(transaction.database()).ofOrder(order.number);
        askForState(records, stored);
        (void)EventStore(transaction.database()).chainOf(circuitSubject(order.circuit));
    });
    if (taken.held) {
        LOOPWRIGHT_TRY(AssignmentStore::releasePlanned(transaction, order.number));
    } else if (const auto claimed = AssignmentStore::claim(transaction, order); !claimed) {
        return failure(claimed.error());
    }
    QJsonObject detail{{"held", taken.held}};
    std::vector<OrderChange> pending;
    if (before) {
        taken.changes = differences(before->order, order);
        detail.insert("changes", toJson(taken.changes));
        pending = changesBetween(before->order, order, sameWires, records.now());
        QJsonArray retires;
        for (const OrderChange &change : pending)
            if (change.what)
                retires << toText(*change.what);
            else
                detail.insert("also_named", change.alsoNamed);
        if (!retires.isEmpty())
            detail.insert("retires", retires);
    }
    taken.event = orderEvent(records, order, before ? "order_changed" : "order_taken", detail);
    LOOPWRIGHT_TRY(refreshState(records, transaction, stored, {pending, {}}));
    if (before)
        LOOPWRIGHT_TRY(refreshBothPremises(records, transaction, before->order, order));
    return taken;
}

Finding conflictFinding(const Conflict &conflict)
{
    return {Severity::Error,   toText(conflict.kind) + "_in_use",
            conflict.reason(), {},
            conflict.field,    0};
}

} // namespace loopwright
