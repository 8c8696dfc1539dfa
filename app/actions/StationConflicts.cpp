#include "app/actions/StationConflicts.h"

#include "app/actions/ToldFacts.h"
#include "core/acceptance/DecisionInput.h"
#include "core/acceptance/FactWords.h"
#include "core/base/Json.h"
#include "core/certificate/CertificateNumber.h"
#include "core/order/OrderColumns.h"
#include "db/ConflictStore.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"

#include <QSet>

#include <algorithm>
#include <map>

namespace loopwright {

namespace {

Text valuesOf(const StationConflict &conflict, int side)
{
    std::vector<Text> values;
    const QJsonObject columns = conflict.content.value("columns").toObject();
    for (auto it = columns.begin(); it != columns.end(); ++it) {
        const QString value = it.value().toArray().at(side).toString();
        const Text name =
            values.empty() ? nameOfColumn(it.key()).continued() : nameOfColumn(it.key());
        values.push_back(value.isEmpty() ? Text(QT_TRANSLATE_NOOP("core", "%1 not given")).arg(name)
                                         : Text::joined({name, Text::verbatim(value)}, " "));
    }
    return Text::joined(values, "; ");
}

/// "Number 217-555-0150 is in use on circuit C-7."
Text holdersOf(const StationConflict &conflict)
{
    std::vector<Text> held;
    const QJsonArray values = conflict.content.value("values").toArray();
    for (const QJsonValue &each : values) {
        JsonReader reader(each.toObject(), "values");
        held.push_back(Conflict::read(reader).reason());
    }
    return Text::joined(held, " ");
}

/// What the entry says, as that side told it.
Result<QString> contentOf(const StationConflict &conflict, const QString &side, LineKind kind)
{
    if (conflict.code != ConflictCode::FactDiffers)
        return QString();
    LOOPWRIGHT_ASSIGN(const auto fact, factAsTold(conflict, side));
    return factText(fact, kind) + " (" + fact.at.text() + ')';
}

Text twiceSays(const StationConflict &conflict)
{
    const auto listed = [&conflict](const char *key) {
        return conflict.content.value(key).toVariant().toStringList();
    };
    QStringList codes;
    for (const QString &digest : listed("digests"))
        codes << shortCode(digest);
    return Text(QT_TRANSLATE_NOOP("core", "Seen: number %1 is that of two certificates (%2), of "
                                          "order %3; the one that is not here must be issued "
                                          "anew, by records with a tag of their own."))
        .arg(conflict.content.value("number").toString())
        .arg(codes.join(", "))
        .arg(listed("orders").join(", "));
}

Text saysOf(const StationConflict &conflict, const QString &side, const QString &content)
{
    const bool office = side == officeSide;
    switch (conflict.code) {
    case ConflictCode::OrderChanged:
        if (side == bothSides)
            return QT_TRANSLATE_NOOP("core", "Two names of one thing: what was measured counts.");
        return Text(office ? QT_TRANSLATE_NOOP("core", "The order says %1: what was measured by "
                                                       "other values never counts.")
                           : QT_TRANSLATE_NOOP("core", "It was worked with %1: the order takes "
                                                       "these values back."))
            .arg(valuesOf(conflict, office ? 1 : 0));
    case ConflictCode::OrderClosed:
        return QT_TRANSLATE_NOOP("core", "Seen: what came after the end is kept and decides "
                                         "nothing.");
    case ConflictCode::TwoStations:
        if (side == bothSides)
            return QT_TRANSLATE_NOOP("core", "Both worked on this line: all of it counts.");
        return office ? QT_TRANSLATE_NOOP("core", "Only what was recorded in the office counts.")
                      : QT_TRANSLATE_NOOP("core", "Only what this station recorded counts.");
    case ConflictCode::ValueInUse:
        return Text(office ? QT_TRANSLATE_NOOP("core", "%1 It stays there; this order gets another "
                                                       "value.")
                           : QT_TRANSLATE_NOOP("core", "%1 The order keeps its value, once it is "
                                                       "free."))
            .arg(holdersOf(conflict));
    case ConflictCode::FactDiffers:
        return Text(office ? QT_TRANSLATE_NOOP("core", "What the office recorded counts: %1")
                           : QT_TRANSLATE_NOOP("core", "What this station recorded counts: %1"))
            .arg(content);
    case ConflictCode::CertificateSuperseded:
        return office ? QT_TRANSLATE_NOOP("core", "The certificate of the office stands.")
                      : QT_TRANSLATE_NOOP("core", "The certificate of this station stands.");
    case ConflictCode::CertificateTwice:
        return twiceSays(conflict);
    case ConflictCode::Forked:
        return QT_TRANSLATE_NOOP("core", "Seen: the records of this station are in use twice, or "
                                         "an older copy of them is. It must be restored from a "
                                         "backup, which gives it a new tag, and added again.");
    case ConflictCode::ClockAhead:
        break;
    }
    return office ? QT_TRANSLATE_NOOP("core", "What is dated ahead never counts.")
                  : QT_TRANSLATE_NOOP("core", "What is dated ahead counts as it is dated.");
}

QStringList factsOf(const StationConflict &conflict, const std::vector<Fact> &facts,
                    const std::vector<FactOrigin> &tellers)
{
    if (conflict.code == ConflictCode::FactDiffers)
        return {conflict.fact()};
    if (conflict.code == ConflictCode::ValueInUse ||
        conflict.code == ConflictCode::CertificateSuperseded ||
        conflict.code == ConflictCode::CertificateTwice || conflict.code == ConflictCode::Forked)
        return {};
    QStringList ids;
    for (const Fact &fact : facts) {
        const auto teller = std::ranges::find_if(tellers, [&](const FactOrigin &each) {
            return each.fact == fact.id && each.station == conflict.station;
        });
        const bool theirs = teller != tellers.end();
        const bool ahead = conflict.code != ConflictCode::ClockAhead || (theirs && teller->ahead);
        if ((theirs || conflict.code == ConflictCode::TwoStations) && ahead)
            ids << fact.id;
    }
    ids.sort();
    return ids;
}

} // namespace

QJsonObject ShownConflict::toJson() const
{
    QJsonArray shown;
    QString settledFor;
    for (const Side &each : sides) {
        shown << QJsonObject{{"side", each.side}, {"says", each.says.english()}};
        if (conflict.settled && conflict.settled->side == each.tag)
            settledFor = each.side;
    }
    QJsonValue settled;
    if (conflict.settled)
        settled = QJsonObject{{"side", settledFor},
                              {"because", conflict.settled->because},
                              {"by", conflict.settled->by},
                              {"at", conflict.settled->at.text()}};
    return {{"conflict", conflict.id},
            {"order", conflict.order},
            {"code", toText(conflict.code)},
            {"stations", QJsonArray::fromStringList(stations)},
            {"facts", QJsonArray::fromStringList(facts)},
            {"since", conflict.since.text()},
            {"sides", shown},
            {"settled", settled}};
}

Result<Fact> factAsTold(const StationConflict &conflict, const QString &side)
{
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(conflict.toldBy(side), "content"));
    return Fact::fromJson(object, "content");
}

namespace {

/// What is asked of an order for each of its conflicts.
struct OrderTold
{
    StoredOrder stored;
    std::vector<FactOrigin> tellers;
    /// But for those of which there are several contents: whose content stands under such an id is
    /// chance, and it hangs on that conflict alone.
    std::vector<Fact> facts;
};

Result<OrderTold> readOrder(const Database &database, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).get(order));
    LOOPWRIGHT_ASSIGN(auto told, ToldFacts::read(database, order));
    const QSet<QString> aside = told.differing();
    std::erase_if(told.facts, [&aside](const Fact &fact) { return aside.contains(fact.id); });
    return OrderTold{stored, std::move(told.tellers), std::move(told.facts)};
}

Result<ShownConflict> shownIn(const Database &database, const OrderTold &order,
                              const StationConflict &conflict)
{
    ShownConflict shown{conflict, {}, {}, factsOf(conflict, order.facts, order.tellers)};
    const auto nameOf = [&database](const QString &tag) -> Result<QString> {
        LOOPWRIGHT_ASSIGN(const auto station, StationStore(database).ofTag(tag));
        return station ? station->name : tag;
    };
    for (const QString &side : sidesOf(conflict, order.tellers)) {
        LOOPWRIGHT_ASSIGN(const QString name, nameOf(side));
        LOOPWRIGHT_ASSIGN(const auto content, contentOf(conflict, side, order.stored.order.kind));
        shown.sides.push_back({name, side, saysOf(conflict, side, content)});
        if (side != officeSide && side != bothSides)
            shown.stations << name;
    }
    if (shown.stations.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const QString name, nameOf(conflict.station));
        shown.stations << name;
    }
    shown.stations.sort();
    return shown;
}

} // namespace

Result<ShownConflict> shownConflict(Records &records, const StationConflict &conflict)
{
    LOOPWRIGHT_ASSIGN(const auto order, readOrder(records.database(), conflict.order));
    return shownIn(records.database(), order, conflict);
}

Result<std::vector<ShownConflict>> stationConflicts(Records &records, const QString &order,
                                                    bool settledToo)
{
    const Database &database = records.database();
    if (!order.isEmpty())
        LOOPWRIGHT_TRY(OrderStore(database).get(order));
    const ConflictStore store(database);
    LOOPWRIGHT_ASSIGN(const auto conflicts, order.isEmpty() ? store.all() : store.ofOrder(order));
    std::vector<ShownConflict> list;
    std::map<QString, OrderTold> orders;
    for (const StationConflict &conflict : conflicts) {
        if (!conflict.isOpen() && !settledToo)
            continue;
        auto read = orders.find(conflict.order);
        if (read == orders.end()) {
            LOOPWRIGHT_ASSIGN(auto told, readOrder(database, conflict.order));
            read = orders.emplace(conflict.order, std::move(told)).first;
        }
        LOOPWRIGHT_ASSIGN(auto shown, shownIn(database, read->second, conflict));
        list.push_back(std::move(shown));
    }
    return list;
}

} // namespace loopwright
