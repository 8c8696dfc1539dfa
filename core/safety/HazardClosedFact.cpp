#include "core/safety/HazardClosedFact.h"

namespace loopwright {

HazardClosedFact HazardClosedFact::read(JsonReader &reader)
{
    HazardClosedFact fact;
    fact.hazard = reader.uuid("hazard");
    fact.source = reader.word<HazardSource>("source");
    fact.by = reader.filledText("by");
    fact.reference = reader.optionalText("reference");
    return fact;
}

void HazardClosedFact::write(QJsonObject &object) const
{
    object.insert("hazard", hazard);
    object.insert("source", toText(source));
    object.insert("by", by);
    if (reference)
        object.insert("reference", *reference);
}

} // namespace loopwright
