#include "core/safety/VisitFact.h"

#include "core/base/FieldCodec.h"

namespace loopwright {

namespace {

constexpr auto visitFields =
    std::tuple{bound("arrived", &VisitFact::arrived), bound("left", &VisitFact::left),
               bound("result", &VisitFact::result)};

} // namespace

VisitFact VisitFact::read(JsonReader &reader)
{
    VisitFact fact;
    readFields(reader, fact, visitFields);
    if (fact.arrived && fact.left && *fact.left < *fact.arrived)
        reader.fail("left", "is before the arrival");
    return fact;
}

void VisitFact::write(QJsonObject &object) const
{
    writeFields(object, *this, visitFields);
}

std::span<const FactField> VisitFact::fields()
{
    static constexpr auto rows = fieldsIn(visitFields);
    return rows;
}

} // namespace loopwright
