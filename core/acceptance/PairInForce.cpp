#include "core/acceptance/PairInForce.h"

#include "core/order/Claims.h"

#include <algorithm>

namespace loopwright {

bool isSamePair(const QString &a, const QString &b)
{
    return pairIdentity(a) == pairIdentity(b);
}

QStringList pairInForce(const DecisionInput &input, const std::vector<const Fact *> &facts)
{
    std::optional<Moment> ordered; // when the order's pair was last changed
    for (const OrderChange &change : input.changes)
        if (change.what == ChangedWhat::Pair)
            ordered = std::max(ordered.value_or(change.at), change.at);
    QString provisional; // said on site, and not yet taken over into the order
    for (const Fact *fact : facts)
        if (const auto *changed = fact->as<ChangedFact>();
            changed && changed->what == ChangedWhat::Pair && changed->to &&
            !input.afterEnd.contains(fact->id) && (!ordered || fact->at > *ordered))
            provisional = *changed->to;
    if (!provisional.isEmpty())
        return {provisional};
    QStringList names{input.order.pair};
    if (!input.order.feederPair.isEmpty())
        names << input.order.feederPair;
    // Another name of the same wires, unless the order is for other wires since.
    for (const OrderChange &change : input.changes)
        if (!change.alsoNamed.isEmpty() && (!ordered || change.at > *ordered))
            names << change.alsoNamed;
    return names;
}

} // namespace loopwright
