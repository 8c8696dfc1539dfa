#include "db/HazardStore.h"

#include "core/order/Claims.h"
#include "db/Statement.h"

#include <algorithm>

namespace loopwright {

Result<QStringList> HazardStore::orders() const
{
    Statement statement(m_database, "hazard.orders");
    return texts(statement, "order_number");
}

Result<QStringList> HazardStore::ordersOnPairs(const QString &order, const QString &office,
                                               const QStringList &pairs) const
{
    QStringList numbers;
    for (const QString &pair : pairs) {
        Statement statement(m_database, "hazard.on_pair");
        statement.bind("pair", pair).bind("office", office).bind("order_number", order);
        LOOPWRIGHT_ASSIGN(const auto found, texts(statement, "order_number"));
        numbers << found;
    }
    numbers.removeDuplicates();
    return numbers;
}

Result<QStringList> HazardStore::pairsOf(const QString &order) const
{
    Statement statement(m_database, "hazard.pairs");
    statement.bind("order_number", order);
    return texts(statement, "pair");
}

Result<QStringList> HazardStore::ordersAtPremises(const ServiceOrder &order) const
{
    Statement statement(m_database, "hazard.at_premises");
    statement.bind("premises_key", premisesKey(order.premises)).bind("order_number", order.number);
    return texts(statement, "order_number");
}

Result<QStringList> HazardStore::openOrdersConcerned(const QString &order,
                                                     const HazardPlace &place) const
{
    Statement statement(m_database, "hazard.open_orders_concerned");
    statement.bind("premises_key", place.premisesKey)
        .bind("pair", place.pair)
        .bind("office", place.office)
        .bind("order_number", order);
    return texts(statement, "order_number");
}

Result<QStringList> HazardStore::openAtOffice(const QString &office) const
{
    Statement statement(m_database, "hazard.open_at_office");
    statement.bind("office", office);
    return texts(statement, "order_number");
}

Result<QStringList> HazardStore::toldElsewhere() const
{
    Statement statement(m_database, "hazard.told_elsewhere");
    return texts(statement, "order_number");
}

Result<std::optional<ToldHazard>> HazardStore::told(const QString &order) const
{
    Statement statement(m_database, "hazard.told");
    statement.bind("order_number", order);
    LOOPWRIGHT_ASSIGN(const auto each, rows(statement, [](const Statement &row) {
                          return std::pair(ToldHazard{row.text("order_number"),
                                                      row.text("office"),
                                                      row.text("premises_key"),
                                                      {row.text("pair")},
                                                      row.integer("events"),
                                                      {}},
                                           row.json("content"));
                      }));
    if (each.empty())
        return std::optional<ToldHazard>();
    ToldHazard told = each.front().first;
    for (const auto &[row, content] : each) {
        LOOPWRIGHT_ASSIGN(const auto cards, HazardCards::fromJson(content, "told_hazard " + order));
        told.cards.add(cards);
        told.pairs << row.pairs;
        told.events = std::max(told.events, row.events);
    }
    told.pairs.removeDuplicates();
    return std::optional(told);
}

Result<std::optional<Fact>> HazardStore::toldCard(const QString &id) const
{
    Statement statement(m_database, "hazard.told_with_card");
    statement.bind("card", id);
    LOOPWRIGHT_ASSIGN(const auto orders, texts(statement, "order_number"));
    for (const QString &order : orders) {
        LOOPWRIGHT_ASSIGN(const auto hazard, told(order));
        for (const Fact &fact : hazard->cards.facts)
            if (fact.id == id && fact.as<SafetyFact>())
                return std::optional(fact);
    }
    return std::optional<Fact>();
}

Result<void> HazardStore::note(Transaction &transaction, const ServiceOrder &order,
                               const QStringList &pairs)
{
    for (const QString &pair : pairs) {
        Statement statement(transaction, "hazard.note");
        statement.bind("pair", pair)
            .bind("office", order.office)
            .bind("order_number", order.number);
        LOOPWRIGHT_TRY(statement.write());
    }
    return {};
}

Result<void> HazardStore::tell(Transaction &transaction, const ToldHazard &given)
{
    LOOPWRIGHT_ASSIGN(const auto before, HazardStore(transaction.database()).told(given.order));
    ToldHazard told = given;
    if (before && before->events > given.events) {
        // Older, or of an office that was restored: it may read a hazard more, and closes none.
        HazardCards more = given.cards;
        std::erase_if(more.facts,
                      [](const Fact &fact) { return fact.as<SafetyFact>() == nullptr; });
        told.cards = before->cards;
        told.cards.add(more);
        told.events = before->events;
    }
    for (const QString &pair : told.pairs) {
        Statement statement(transaction, "hazard.tell");
        statement.bind("order_number", told.order)
            .bind("pair", pair)
            .bind("office", told.office)
            .bind("premises_key", told.premisesKey)
            .bind("events", told.events)
            .bindJson("content", told.cards.toJson());
        LOOPWRIGHT_TRY(statement.write());
    }
    return {};
}

QJsonObject ToldHazard::toJson() const
{
    return {{"order", order},
            {"office", office},
            {"premises_key", premisesKey},
            {"pairs", QJsonArray::fromStringList(pairs)},
            {"events", events},
            {"cards", cards.toJson()}};
}

Result<ToldHazard> ToldHazard::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    ToldHazard told;
    told.order = reader.filledText("order", longestOrderName);
    told.office = reader.text("office", longestOrderName);
    told.premisesKey = reader.text("premises_key", longestOrderText);
    for (const QJsonValue &pair : reader.array("pairs", 1000))
        told.pairs << pair.toString();
    told.events = reader.integer("events", 0, 1'000'000'000);
    LOOPWRIGHT_ASSIGN(told.cards,
                      HazardCards::fromJson(reader.raw("cards").toObject(), reader.place("cards")));
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return told;
}

} // namespace loopwright
