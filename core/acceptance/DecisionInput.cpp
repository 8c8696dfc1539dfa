// The stored form of a decision's input.

#include "core/acceptance/DecisionInput.h"

#include "core/acceptance/FactList.h"
#include "core/order/NumberRange.h"
#include "core/order/OrderIdentifiers.h"

namespace loopwright {

Text Conflict::reason() const
{
    return Text(kind == ClaimKind::Dn
                    ? QT_TRANSLATE_NOOP("core", "Number %1 is in use on circuit %2.")
                : kind == ClaimKind::Spid
                    ? QT_TRANSLATE_NOOP("core", "SPID %1 is in use on circuit %2.")
                    : QT_TRANSLATE_NOOP("core", "Pair %1 is in use on circuit %2."))
        .arg(value)
        .arg(circuit);
}

QJsonObject Conflict::toJson() const
{
    return {{"field", field}, {"kind", toText(kind)}, {"value", value}, {"circuit", circuit}};
}

Conflict Conflict::read(JsonReader &reader)
{
    return {reader.text("field"), reader.word<ClaimKind>("kind"),
            reader.text("value", longestOrderText), reader.text("circuit", longestOrderName)};
}

Findings checkOrderIdentifiers(const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    if (!variant || order.type == OrderType::Disconnect)
        return {};
    ProtocolVariant asOrdered = *variant;
    if (order.isPointToPoint()) {
        asOrdered.pointToPoint = true;
        asOrdered.tei = TeiRule::FixedZero;
    }
    Findings found = checkTerminals(asOrdered, identifiersOf(order), order.bothChannelsOrdered());
    for (Finding &each : checkNumberRange(order))
        found.push_back(std::move(each));
    return found;
}

namespace {

QJsonObject changeJson(const OrderChange &change)
{
    QJsonObject object{{"at", change.at.text()}};
    if (change.what)
        object.insert("what", toText(*change.what));
    if (!change.alsoNamed.isEmpty())
        object.insert("also_named", change.alsoNamed);
    return object;
}

} // namespace

QJsonObject DecisionInput::toJson() const
{
    QJsonArray held, changed, used;
    for (const Conflict &conflict : conflicts)
        held << conflict.toJson();
    for (const OrderChange &change : changes)
        changed << changeJson(change);
    for (const Instrument &instrument : instruments)
        used << instrument.toJson();
    QJsonArray made;
    for (const Visit &visit : visits)
        made << visit.toJson();
    QJsonObject object{{"order", order.toJson()},
                       {"scope", toText(scope)},
                       {"conflicts", held},
                       {"changes", changed},
                       {"instruments", used},
                       {"facts", listOf(facts)},
                       {"limit_set", limitSet},
                       {"visits", made},
                       {"self_tests", listOf(selfTests)},
                       {"after_end", QJsonArray::fromStringList(afterEnd)},
                       {"pair_cards", listOf(pairCards)},
                       {"premises_cards", listOf(premisesCards)},
                       {"by_supervisor", QJsonArray::fromStringList(bySupervisor)}};
    if (takenIn)
        object.insert("taken_in", takenIn->text());
    // Most orders never leave the office.
    if (!setAside.empty())
        object.insert("set_aside", listOf(setAside));
    if (!toldUnder.isEmpty())
        object.insert("told_under", objectOf(toldUnder));
    if (!measuredOn.isEmpty())
        object.insert("measured_on", objectOf(measuredOn));
    return object;
}

namespace {

QMap<QString, QString> readTexts(JsonReader &reader, const QString &key)
{
    return reader.has(key) ? textsIn(reader.raw(key).toObject()) : QMap<QString, QString>();
}

template<class Read>
void readEach(JsonReader &reader, const QString &key, const Read &read)
{
    const QJsonArray list = reader.array(key, mostFacts);
    for (int i = 0; i < list.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item(key, i, list[i]);
        read(item);
        item.done();
    }
}

} // namespace

Result<DecisionInput> DecisionInput::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    DecisionInput input;
    LOOPWRIGHT_ASSIGN(const auto order,
                      ServiceOrder::fromJson(reader.raw("order").toObject(), place + ".order"));
    input.order = order;
    input.scope = reader.word<OrderScope>("scope");
    input.limitSet = reader.text("limit_set");
    readEach(reader, "conflicts",
             [&input](JsonReader &item) { input.conflicts.push_back(Conflict::read(item)); });
    readEach(reader, "changes", [&input](JsonReader &item) {
        input.changes.push_back({item.optionalWord<ChangedWhat>("what"), item.moment("at"),
                                 item.optionalText("also_named").value_or(QString())});
    });
    readEach(reader, "instruments",
             [&input](JsonReader &item) { input.instruments << Instrument::read(item); });
    readEach(reader, "visits",
             [&input](JsonReader &item) { input.visits.push_back(Visit::read(item)); });
    LOOPWRIGHT_ASSIGN(auto facts, readFacts(reader, "facts"));
    input.facts = std::move(facts);
    LOOPWRIGHT_ASSIGN(auto tests, readFacts(reader, "self_tests"));
    input.selfTests = std::move(tests);
    LOOPWRIGHT_ASSIGN(auto cards, readFacts(reader, "pair_cards"));
    input.pairCards = std::move(cards);
    LOOPWRIGHT_ASSIGN(auto nearby, readFacts(reader, "premises_cards"));
    input.premisesCards = std::move(nearby);
    input.takenIn = reader.optionalMoment("taken_in");
    for (const QJsonValue &id : reader.array("after_end", mostFacts))
        input.afterEnd << id.toString();
    for (const QJsonValue &id : reader.array("by_supervisor", mostFacts))
        input.bySupervisor << id.toString();
    if (reader.has("set_aside"))
        input.setAside = readSetAside(reader, "set_aside");
    input.toldUnder = readTexts(reader, "told_under");
    input.measuredOn = readTexts(reader, "measured_on");
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return input;
}

} // namespace loopwright
