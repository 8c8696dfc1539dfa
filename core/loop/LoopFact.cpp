#include "core/loop/LoopFact.h"

namespace loopwright {

LoopFact LoopFact::read(JsonReader &reader)
{
    LoopFact fact;
    fact.from = reader.optionalWord<MeasuredFrom>("from");
    fact.dcResistanceOhm = reader.optionalNumber("dc_resistance_ohm", 0, 1e6);
    fact.lossDb = reader.optionalNumber("loss_db", -20, 200);
    fact.frequencyHz = reader.optionalNumber("frequency_hz", 20, 1e7);
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
    if (from)
        object.insert("from", toText(*from));
    if (dcResistanceOhm)
        object.insert("dc_resistance_ohm", *dcResistanceOhm);
    if (lossDb)
        object.insert("loss_db", *lossDb);
    if (frequencyHz)
        object.insert("frequency_hz", *frequencyHz);
    if (makeup)
        object.insert("makeup", makeup->toJson());
}

} // namespace loopwright
