#include "app/actions/StationConflicts.h"

#include "app/actions/ToldFacts.h"
#include "core/acceptance/DecisionInput.h"
#include "core/acceptance/FactWords.h"
#include "core/acceptance/Proof.h"
#include "core/base/Json.h"
#include "core/base/PaperTime.h"
#include "core/certificate/CertificateNumber.h"
#include "core/order/OrderColumns.h"
#include "db/CertificateStore.h"
#include "db/ConflictStore.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"

#include <QSet>

#include <algorithm>
#include <map>

namespace loopwright {

namespace {

/// What is asked of an order for each of its conflicts.
struct OrderTold
{
    StoredOrder stored;
    std::vector<FactOrigin> tellers;
    /// But for those of which there are several contents: whose content stands under such an id is
    /// chance, and it hangs on that conflict alone.
    std::vector<Fact> facts;
    QStringList certificates; ///< numbers
};

Result<OrderTold> readOrder(const Database &database, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).get(order));
    LOOPWRIGHT_ASSIGN(auto told, ToldFacts::read(database, order));
    const QSet<QString> aside = told.differing();
    std::erase_if(told.facts, [&aside](const Fact &fact) { return aside.contains(fact.id); });
    OrderTold read{stored, std::move(told.tellers), std::move(told.facts), {}};
    LOOPWRIGHT_ASSIGN(const auto certificates, CertificateStore(database).ofOrder(order));
    for (const StoredCertificate &each : certificates)
        read.certificates << each.number;
    return read;
}

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

/// "5 entries, 4 March 2026, 08:32 to 08:47 (UTC-06:00)"
Text entriesText(const std::vector<const Fact *> &facts)
{
    if (facts.empty())
        return QT_TRANSLATE_NOOP("core", "no entry");
    const auto [first, last] =
        std::ranges::minmax(facts, {}, [](const Fact *fact) { return timeOf(*fact); });
    return Text::joined(
        {Text::counted(QT_TRANSLATE_NOOP("core", "%n entry"),
                       QT_TRANSLATE_NOOP("core", "%n entries"), qint64(facts.size())),
         Text::verbatim(paperTimes(timeOf(*first), timeOf(*last)))},
        ", ");
}

/// What counts if it is settled for that side, and what is set aside then.
Text workSays(const OrderTold &order, const QString &side)
{
    std::vector<const Fact *> counts, aside;
    for (const Fact &fact : order.facts)
        if (isEvidence(fact))
            aside.push_back(&fact);
    if (side == bothSides)
        return Text(QT_TRANSLATE_NOOP("core", "Both worked on this line: all of it counts (%1)."))
            .arg(entriesText(aside));
    counts = workOf(side, order.facts, order.tellers);
    std::erase_if(aside, [&counts](const Fact *fact) {
        return std::ranges::find(counts, fact) != counts.end();
    });
    return Text(side == officeSide
                    ? QT_TRANSLATE_NOOP("core", "Only what was recorded in the office counts: %1. "
                                                "Set aside: %2.")
                    : QT_TRANSLATE_NOOP("core", "Only what this station recorded counts: %1. Set "
                                                "aside: %2."))
        .arg(entriesText(counts))
        .arg(entriesText(aside));
}

/// The numbers that bear the tag of the station, the office's: none of those that are known.
Text certificateSays(const OrderTold &order, const StationConflict &conflict, const QString &side)
{
    const QStringList stations = conflict.content.value("stations").toVariant().toStringList();
    QStringList numbers;
    for (const QString &number : order.certificates) {
        const QString tag = number.section('-', 1, 1);
        if (tag == side || (side == officeSide && !stations.contains(tag)))
            numbers << number;
    }
    return Text(side == officeSide
                    ? QT_TRANSLATE_NOOP("core", "The certificate of the office stands: %1.")
                    : QT_TRANSLATE_NOOP("core", "The certificate of this station stands: %1."))
        .arg(numbers.join(", "));
}

/// What is dated ahead of that station's work.
Text aheadSays(const OrderTold &order, const StationConflict &conflict, const QString &side)
{
    std::vector<const Fact *> ahead;
    for (const Fact &fact : order.facts)
        if (std::ranges::any_of(order.tellers, [&](const FactOrigin &each) {
                return each.ahead && each.fact == fact.id && each.station == conflict.station;
            }))
            ahead.push_back(&fact);
    return Text(side == officeSide
                    ? QT_TRANSLATE_NOOP("core", "What is dated ahead never counts: %1.")
                    : QT_TRANSLATE_NOOP("core", "What is dated ahead counts as it is dated: %1."))
        .arg(entriesText(ahead));
}

Text saysOf(const OrderTold &order, const StationConflict &conflict, const QString &side,
            const QString &content)
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
        return workSays(order, side);
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
        return certificateSays(order, conflict, side);
    case ConflictCode::CertificateTwice:
        return twiceSays(conflict);
    case ConflictCode::Forked:
        return QT_TRANSLATE_NOOP("core", "Seen: the records of this station are in use twice, or "
                                         "an older copy of them is. It must be restored from a "
                                         "backup, which gives it a new tag, and added again.");
    case ConflictCode::ClockAhead:
        break;
    }
    return aheadSays(order, conflict, side);
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

Result<ShownConflict> shownIn(const Database &database, const OrderTold &order,
                              const StationConflict &conflict)
{
    ShownConflict shown{conflict, {}, {}, factsOf(conflict, order.facts, order.tellers)};
    const auto nameOf = [&database](const QString &tag) -> Result<QString> {
        LOOPWRIGHT_ASSIGN(const auto station, StationStore(database).ofTag(tag));
        return station ? station->name : tag;
    };
    for (const QString &side : sidesOf(conflict, order.facts, order.tellers)) {
        LOOPWRIGHT_ASSIGN(const QString name, nameOf(side));
        LOOPWRIGHT_ASSIGN(const auto content, contentOf(conflict, side, order.stored.order.kind));
        shown.sides.push_back({name, side, saysOf(order, conflict, side, content)});
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
