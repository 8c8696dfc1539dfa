#include "core/loop/AnalogFact.h"

namespace loopwright {

namespace {

AnalogValue readValue(JsonReader &reader, const AnalogQuantityInfo &quantity, double factor)
{
    if (quantity.yesOrNo)
        return reader.boolean("value");
    return reader.number("value", quantity.min / factor, quantity.max / factor);
}

} // namespace

AnalogValue AnalogFact::value() const
{
    if (const double *number = std::get_if<double>(&written))
        return unit ? *number * unitFactor(quantity, *unit).value_or(1) : *number;
    return written;
}

AnalogFact AnalogFact::read(JsonReader &reader)
{
    AnalogFact fact;
    fact.quantity = reader.word<AnalogQuantity>("quantity");
    fact.unit = reader.optionalText("unit", 20);
    if (reader.failed())
        return fact;
    const AnalogQuantityInfo &quantity = info(fact.quantity);
    const auto factor = unitFactor(fact.quantity, fact.unit.value_or(QString()));
    if (fact.unit && !factor) {
        const QString due =
            quantity.yesOrNo ? QString("none (true or false)") : QString::fromUtf8(quantity.unit);
        reader.fail("unit", QString("\"%1\" does not fit %2; its unit is %3")
                                .arg(*fact.unit, QString::fromUtf8(quantity.name), due));
    }
    fact.written = readValue(reader, quantity, factor.value_or(1));
    return fact;
}

void AnalogFact::write(QJsonObject &object) const
{
    object.insert("quantity", toText(quantity));
    if (const double *number = std::get_if<double>(&written))
        object.insert("value", *number);
    else
        object.insert("value", std::get<bool>(written));
    if (unit)
        object.insert("unit", *unit);
}

} // namespace loopwright
