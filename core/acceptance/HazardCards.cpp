#include "core/acceptance/HazardCards.h"

#include "core/acceptance/FactList.h"

#include <algorithm>

namespace loopwright {

void HazardCards::add(const HazardCards &other)
{
    for (const Fact &fact : other.facts)
        if (std::ranges::find(facts, fact.id, &Fact::id) == facts.end())
            facts.push_back(fact);
    bySupervisor << other.bySupervisor;
    bySupervisor.removeDuplicates();
    for (const SetAside &each : other.setAside)
        if (std::ranges::find(setAside, each.fact, &SetAside::fact) == setAside.end())
            setAside.push_back(each);
    for (auto told = other.toldUnder.begin(); told != other.toldUnder.end(); ++told)
        if (!toldUnder.contains(told.key()))
            toldUnder.insert(told.key(), told.value());
}

QJsonObject HazardCards::toJson() const
{
    return {{"facts", listOf(facts)},
            {"by_supervisor", QJsonArray::fromStringList(bySupervisor)},
            {"set_aside", listOf(setAside)},
            {"told_under", objectOf(toldUnder)}};
}

Result<HazardCards> HazardCards::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    HazardCards cards;
    LOOPWRIGHT_ASSIGN(cards.facts, readFacts(reader, "facts"));
    for (const QJsonValue &id : reader.array("by_supervisor", mostFacts))
        cards.bySupervisor << id.toString();
    cards.setAside = readSetAside(reader, "set_aside");
    cards.toldUnder = textsIn(reader.raw("told_under").toObject());
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return cards;
}

} // namespace loopwright
