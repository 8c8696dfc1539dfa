#include "core/safety/HazardClosedFact.h"

#include "core/base/FieldCodec.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr auto hazardClosedFields = std::tuple{
    boundId("hazard", &HazardClosedFact::hazard), bound("source", &HazardClosedFact::source),
    bound("by", &HazardClosedFact::by, 200), bound("reference", &HazardClosedFact::reference, 200)};

} // namespace

bool namesReference(const QString &reference)
{
    return std::ranges::any_of(reference, [](QChar letter) { return letter.isLetterOrNumber(); });
}

HazardClosedFact HazardClosedFact::read(JsonReader &reader)
{
    HazardClosedFact fact;
    if (!reader.has("hazard"))
        reader.fail("hazard",
                    "is required and missing: the id of the safety card that read the hazard");
    readFields(reader, fact, hazardClosedFields);
    return fact;
}

void HazardClosedFact::write(QJsonObject &object) const
{
    writeFields(object, *this, hazardClosedFields);
}

std::span<const FactField> HazardClosedFact::fields()
{
    static constexpr auto rows = fieldsIn(hazardClosedFields);
    return rows;
}

} // namespace loopwright
