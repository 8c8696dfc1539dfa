#include "app/actions/BundleHazards.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/EvidenceStore.h"
#include "core/acceptance/FactList.h"
#include "core/order/Claims.h"
#include "db/EventStore.h"
#include "db/HazardStore.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

/// With the other orders on its pairs, where it may have been closed.
Result<QStringList> openAt(const Database &database, const QString &office)
{
    const HazardStore hazards(database);
    LOOPWRIGHT_ASSIGN(auto orders, hazards.openAtOffice(office));
    const QStringList open = orders;
    for (const QString &order : open) {
        LOOPWRIGHT_ASSIGN(const auto pairs, hazards.pairsOf(order));
        LOOPWRIGHT_ASSIGN(const auto onPair, hazards.ordersOnPairs(order, office, pairs));
        orders << onPair;
    }
    return orders;
}

/// As the records have it, with what another station told of it.
Result<std::optional<ToldHazard>> toTell(const Database &database, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).find(order));
    if (!stored)
        return HazardStore(database).told(order);
    ToldHazard told{order, stored->order.office, premisesKey(stored->order.premises), {}, 0, {}};
    LOOPWRIGHT_ASSIGN(told.pairs, HazardStore(database).pairsOf(order));
    LOOPWRIGHT_ASSIGN(const auto before, HazardStore(database).told(order));
    if (before)
        told.pairs << before->pairs;
    told.pairs.removeDuplicates();
    LOOPWRIGHT_ASSIGN(told.cards, EvidenceStore(database).hazardCardsOf(order));
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(order));
    told.events = events.empty() ? 0 : events.back().sequence;
    return std::optional(told);
}

} // namespace

Result<QJsonArray> hazardsGoing(const Database &database, const QStringList &around,
                                QStringList offices)
{
    QStringList numbers = around;
    offices.removeDuplicates();
    for (const QString &office : std::as_const(offices)) {
        LOOPWRIGHT_ASSIGN(const auto open, openAt(database, office));
        numbers << open;
    }
    numbers.removeDuplicates();
    numbers.sort();
    QJsonArray hazards;
    for (const QString &number : std::as_const(numbers)) {
        LOOPWRIGHT_ASSIGN(const auto told, toTell(database, number));
        if (told)
            hazards << told->toJson();
    }
    return hazards;
}

Result<void> takeHazards(Records &records, Transaction &transaction, const QJsonObject &registers,
                         const QString &place)
{
    JsonReader reader(registers, place + ".registers");
    const QJsonArray list =
        reader.has("hazards") ? reader.array("hazards", mostFacts) : QJsonArray();
    LOOPWRIGHT_TRY(reader.result());
    const HazardStore hazards(transaction.database());
    QSet<QString> concerned;
    for (int i = 0; i < list.size(); ++i) {
        LOOPWRIGHT_ASSIGN(
            const auto told,
            ToldHazard::fromJson(list[i].toObject(),
                                 QString("%1.registers.hazards[%2]").arg(place).arg(i)));
        LOOPWRIGHT_TRY(HazardStore::tell(transaction, told));
        LOOPWRIGHT_ASSIGN(const auto own, OrderStore(transaction.database()).find(told.order));
        if (own)
            concerned.insert(told.order);
        for (const QString &pair : told.pairs) {
            LOOPWRIGHT_ASSIGN(
                const auto orders,
                hazards.openOrdersConcerned(told.order, {told.office, pair, told.premisesKey}));
            concerned.unite(QSet<QString>(orders.begin(), orders.end()));
        }
    }
    for (const QString &order : concerned)
        LOOPWRIGHT_TRY(refreshState(records, transaction, order));
    return {};
}

} // namespace loopwright
