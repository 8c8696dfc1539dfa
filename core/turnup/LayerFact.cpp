#include "core/turnup/LayerFact.h"

#include "core/base/FieldCodec.h"

namespace loopwright {

namespace {

constexpr auto layerFields = std::tuple{bound("layer", &LayerFact::layer, "", 1, 3),
                                        bound("interface", &LayerFact::interface),
                                        bound("terminal", &LayerFact::terminal, "", 1, 8),
                                        bound("outcome", &LayerFact::outcome),
                                        bound("tei", &LayerFact::tei, "", 0, 127),
                                        bound("cause", &LayerFact::cause, "", 1, 127),
                                        bound("cause_location", &LayerFact::causeLocation)};

} // namespace

LayerFact LayerFact::read(JsonReader &reader)
{
    LayerFact fact;
    readFields(reader, fact, layerFields);
    return fact;
}

void LayerFact::write(QJsonObject &object) const
{
    writeFields(object, *this, layerFields);
}

std::span<const FactField> LayerFact::fields()
{
    static constexpr auto rows = fieldsIn(layerFields);
    return rows;
}

} // namespace loopwright
