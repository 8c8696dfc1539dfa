#include "core/order/OrderScope.h"

#include "core/order/Claims.h"

namespace loopwright {

OrderScope scopeOf(const ServiceOrder &order, const std::optional<ServiceOrder> &working)
{
    switch (order.type) {
    case OrderType::Disconnect:
        return OrderScope::Nothing;
    case OrderType::RecordOnly:
        return OrderScope::RecordOnly;
    case OrderType::Repair:
        return OrderScope::Repair;
    case OrderType::New:
        return OrderScope::Full;
    case OrderType::Move:
    case OrderType::Change:
        break;
    }
    if (!working)
        return OrderScope::Full;
    const bool sameLine =
        pairKey(order.pair) == pairKey(working->pair) && order.variant == working->variant &&
        order.kind == working->kind && order.office == working->office && order.b1 == working->b1 &&
        order.b2 == working->b2 && order.d == working->d && order.dataRate == working->dataRate;
    const bool samePremises = premisesKey(order.premises) == premisesKey(working->premises);
    if (order.type == OrderType::Move)
        return samePremises && sameLine ? OrderScope::MoveWithin : OrderScope::Full;
    return sameLine && samePremises ? OrderScope::NumbersOnly : OrderScope::Full;
}

std::vector<ChangedWhat> whatChanged(const ServiceOrder &before, const ServiceOrder &after,
                                     bool sameWires)
{
    std::vector<ChangedWhat> changed;
    if (before.office != after.office || before.kind != after.kind)
        changed.push_back(ChangedWhat::LineEquipment);
    if (pairKey(before.pair) != pairKey(after.pair) && !sameWires)
        changed.push_back(ChangedWhat::Pair);
    const auto identifiers = [](const ServiceOrder &order) {
        QStringList list{order.variant};
        for (const OrderedTerminal &terminal : order.terminals)
            list << QString::number(terminal.number) << terminal.dn << terminal.spid
                 << terminal.tei;
        return list;
    };
    if (identifiers(before) != identifiers(after))
        changed.push_back(ChangedWhat::Identifiers);
    return changed;
}

} // namespace loopwright
