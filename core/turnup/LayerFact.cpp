#include "core/turnup/LayerFact.h"

namespace loopwright {

namespace {

std::optional<int> smallInteger(JsonReader &reader, const QString &key, int min, int max)
{
    const auto found = reader.optionalInteger(key, min, max);
    return found ? std::optional(int(*found)) : std::nullopt;
}

} // namespace

LayerFact LayerFact::read(JsonReader &reader)
{
    LayerFact fact;
    fact.layer = int(reader.integer("layer", 1, 3));
    fact.interface = reader.optionalWord<LineInterface>("interface");
    fact.terminal = smallInteger(reader, "terminal", 1, 8);
    fact.outcome = reader.word<LayerOutcome>("outcome");
    fact.tei = smallInteger(reader, "tei", 0, 127);
    fact.cause = smallInteger(reader, "cause", 1, 127);
    fact.causeLocation = reader.optionalWord<CauseLocation>("cause_location");
    return fact;
}

void LayerFact::write(QJsonObject &object) const
{
    object.insert("layer", layer);
    object.insert("outcome", toText(outcome));
    if (interface)
        object.insert("interface", toText(*interface));
    if (terminal)
        object.insert("terminal", *terminal);
    if (tei)
        object.insert("tei", *tei);
    if (cause)
        object.insert("cause", *cause);
    if (causeLocation)
        object.insert("cause_location", toText(*causeLocation));
}

} // namespace loopwright
