#include "core/loop/AnalogFact.h"

#include "core/base/FieldCodec.h"

namespace loopwright {

namespace {

constexpr auto analogFields =
    std::tuple{bound("quantity", &AnalogFact::quantity), bound("unit", &AnalogFact::unit, 20),
               apart({.key = "value", .type = FieldType::Value, .required = true})};

} // namespace

AnalogValue AnalogFact::value() const
{
    if (const double *number = std::get_if<double>(&written))
        return unit ? *number * unitFactor(quantity, *unit).value_or(1) : *number;
    return written;
}

std::optional<double> AnalogFact::number() const
{
    const AnalogValue read = value();
    const auto *number = std::get_if<double>(&read);
    return number ? std::optional(*number) : std::nullopt;
}

AnalogFact AnalogFact::read(JsonReader &reader)
{
    AnalogFact fact;
    readFields(reader, fact, analogFields);
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
    FactField value = valueFieldOf(fact.quantity);
    value.minimum /= factor.value_or(1);
    value.maximum /= factor.value_or(1);
    if (quantity.yesOrNo)
        fact.written = reader.boolean("value");
    else
        fact.written = reader.number(value);
    return fact;
}

void AnalogFact::write(QJsonObject &object) const
{
    writeFields(object, *this, analogFields);
    if (const double *number = std::get_if<double>(&written))
        object.insert("value", *number);
    else
        object.insert("value", std::get<bool>(written));
}

std::span<const FactField> AnalogFact::fields()
{
    static constexpr auto rows = fieldsIn(analogFields);
    return rows;
}

} // namespace loopwright
