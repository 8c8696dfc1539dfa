#include "app/actions/OrderIntake.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "core/order/Claims.h"
#include "db/AssignmentStore.h"
#include "db/FactStore.h"

namespace loopwright {

namespace {

/// Column to [before, after] of the columns that differ.
QJsonObject differences(const ServiceOrder &before, const ServiceOrder &after)
{
    const OrderFields old = before.fields(), now = after.fields();
    QJsonObject changes;
    for (const QString &column : old.keys() + now.keys())
        if (old.value(column) != now.value(column))
            changes.insert(column, QJsonArray{old.value(column), now.value(column)});
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

Result<TakenOrder> takeOrder(Records &records, Transaction &transaction, const ServiceOrder &order,
                             const std::optional<StoredOrder> &before, bool sameWires)
{
    TakenOrder taken;
    LOOPWRIGHT_ASSIGN(const auto conflicts,
                      AssignmentStore(transaction.database()).conflictsOf(order));
    for (const Conflict &conflict : conflicts)
        taken.findings.push_back(conflictFinding(conflict));
    taken.held = !conflicts.empty() || worst(checkOrderIdentifiers(order)) == Severity::Error;
    LOOPWRIGHT_TRY(OrderStore::put(transaction, order, taken.held));
    if (taken.held) {
        LOOPWRIGHT_TRY(AssignmentStore::releasePlanned(transaction, order.number));
    } else if (const auto claimed = AssignmentStore::claim(transaction, order); !claimed) {
        return failure(claimed.error());
    }
    QJsonObject detail{{"held", taken.held}};
    std::vector<OrderChange> pending;
    if (before) {
        detail.insert("changes", differences(before->order, order));
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
    LOOPWRIGHT_TRY(refreshState(records, transaction, order.number, {pending, {}}));
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
