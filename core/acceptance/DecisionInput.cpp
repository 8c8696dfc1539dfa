// The stored form of a decision's input.

#include "core/acceptance/Decide.h"

namespace loopwright {

QString Conflict::reason() const
{
    const QString what = kind == "dn" ? "Number" : kind == "spid" ? "SPID" : "Pair";
    return QString("%1 %2 is in use on circuit %3.").arg(what, value, circuit);
}

QJsonObject DecisionInput::toJson() const
{
    QJsonArray held, changed, used, evidence;
    for (const Conflict &conflict : conflicts)
        held << QJsonObject{{"field", conflict.field},
                            {"kind", conflict.kind},
                            {"value", conflict.value},
                            {"circuit", conflict.circuit}};
    for (const OrderChange &change : changes)
        changed << QJsonObject{{"what", change.what}, {"at", change.at.text()}};
    for (const Instrument &instrument : instruments)
        used << instrument.toJson();
    for (const Fact &fact : facts)
        evidence << fact.toJson();
    return {{"order", order.toJson()}, {"scope", toText(scope)}, {"conflicts", held},
            {"changes", changed},      {"instruments", used},    {"facts", evidence},
            {"limit_set", limitSet}};
}

Result<DecisionInput> DecisionInput::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    DecisionInput input;
    const auto order = ServiceOrder::fromJson(reader.raw("order").toObject(), place + ".order");
    if (!order)
        return failure(order.error());
    input.order = *order;
    input.scope = reader.word<OrderScope>("scope");
    input.limitSet = reader.text("limit_set");
    const auto each = [&reader](const QString &key, const auto &read) {
        const QJsonArray list = reader.array(key, 100000);
        for (int i = 0; i < list.size() && !reader.failed(); ++i) {
            JsonReader item = reader.item(key, i, list[i]);
            read(item);
            item.done();
        }
    };
    each("conflicts", [&input](JsonReader &item) {
        input.conflicts.push_back({item.text("field"), item.text("kind"),
                                   item.text("value", longestOrderText),
                                   item.text("circuit", longestOrderName)});
    });
    each("changes", [&input](JsonReader &item) {
        input.changes.push_back({item.text("what"), item.moment("at")});
    });
    each("instruments",
         [&input](JsonReader &item) { input.instruments << Instrument::read(item); });
    const QJsonArray facts = reader.array("facts", 100000);
    for (int i = 0; i < facts.size(); ++i) {
        const auto fact =
            Fact::fromJson(facts[i].toObject(), QString("%1.facts[%2]").arg(place).arg(i));
        if (!fact)
            return failure(fact.error());
        input.facts.push_back(*fact);
    }
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return input;
}

} // namespace loopwright
