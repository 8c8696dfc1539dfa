#include "core/loop/LoopFact.h"

#include "core/base/FieldCodec.h"

namespace loopwright {

namespace {

constexpr auto loopFields =
    std::tuple{bound("from", &LoopFact::from),
               bound("dc_resistance_ohm", &LoopFact::dcResistanceOhm, "ohm", 0, 1e6),
               bound("loss_db", &LoopFact::lossDb, "dB", -20, 200),
               bound("frequency_hz", &LoopFact::frequencyHz, "Hz", 20, 1e7),
               apart({"makeup", FieldType::Makeup})};

} // namespace

LoopFact LoopFact::read(JsonReader &reader)
{
    LoopFact fact;
    readFields(reader, fact, loopFields);
    if (reader.has("makeup")) {
        JsonReader child = reader.child("makeup");
        fact.makeup = LoopMakeup::read(child);
        child.done();
    }
    if (!fact.dcResistanceOhm && !fact.lossDb && !fact.makeup)
        reader.fail("", "holds none of dc_resistance_ohm, loss_db and makeup");
    return fact;
}

void LoopFact::write(QJsonObject &object) const
{
    writeFields(object, *this, loopFields);
    if (makeup)
        object.insert("makeup", makeup->toJson());
}

std::span<const FactField> LoopFact::fields()
{
    static constexpr auto rows = fieldsIn(loopFields);
    return rows;
}

} // namespace loopwright
