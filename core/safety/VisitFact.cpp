#include "core/safety/VisitFact.h"

namespace loopwright {

VisitFact VisitFact::read(JsonReader &reader)
{
    VisitFact fact;
    fact.arrived = reader.optionalMoment("arrived");
    fact.left = reader.optionalMoment("left");
    fact.result = reader.optionalWord<VisitResult>("result");
    if (fact.arrived && fact.left && *fact.left < *fact.arrived)
        reader.fail("left", "is before the arrival");
    return fact;
}

void VisitFact::write(QJsonObject &object) const
{
    if (arrived)
        object.insert("arrived", arrived->text());
    if (left)
        object.insert("left", left->text());
    if (result)
        object.insert("result", toText(*result));
}

} // namespace loopwright
