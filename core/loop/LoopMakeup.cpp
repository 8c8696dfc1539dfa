#include "core/loop/LoopMakeup.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int maxElements = 200;
constexpr double maxFeet = 300'000;
constexpr double tiny = 1e-9; ///< shortest length and smallest coil that is taken

QString plain(double value)
{
    return QString::number(value, 'g', 10);
}

/// "19, 22, 24, 26".
template<class T>
QString listed(std::span<const T> values)
{
    QStringList texts;
    for (const T value : values)
        texts << plain(double(value));
    return texts.join(", ");
}

/// Exactly one of the two keys must be there; says which.
bool hasFirst(JsonReader &reader, const QString &first, const QString &second)
{
    if (reader.has(first) == reader.has(second))
        reader.fail(first, reader.has(first)
                               ? QString("stands beside %1; only one of the two may").arg(second)
                               : QString("or %1 is required and missing").arg(second));
    return reader.has(first);
}

Wire readWire(JsonReader &reader)
{
    Wire wire;
    if (hasFirst(reader, "gauge_awg", "diameter_mm")) {
        wire.gaugeAwg = int(reader.integer("gauge_awg", 1, 60));
        if (!reader.failed() && !isKnown(wire))
            reader.fail("gauge_awg", "must be one of " + listed(knownGauges()));
    } else if (!reader.failed()) {
        wire.diameterMm = reader.number("diameter_mm", 0.01, 10);
        if (!reader.failed() && !isKnown(wire))
            reader.fail("diameter_mm", "must be one of " + listed(knownDiameters()));
    }
    return wire;
}

Length readLength(JsonReader &reader)
{
    if (hasFirst(reader, "length_ft", "length_m"))
        return {reader.number("length_ft", tiny, maxFeet), LengthUnit::Foot};
    if (reader.failed())
        return {};
    return {reader.number("length_m", tiny, maxFeet * metresPerFoot), LengthUnit::Metre};
}

std::optional<double> readCapacitance(JsonReader &reader)
{
    return reader.optionalNumber("capacitance_nf_per_km", 10, 200);
}

LoopElement readElement(JsonReader &reader)
{
    LoopElement element;
    element.type = reader.word<ElementType>("type");
    if (reader.failed())
        return element;
    if (element.type == ElementType::LoadCoil) {
        element.millihenry = reader.number("millihenry", tiny, 1000);
        element.ohms = reader.optionalNumber("ohms", 0, 1000);
    } else {
        element.wire = readWire(reader);
        element.length = readLength(reader);
        element.capacitanceNfPerKm = readCapacitance(reader);
    }
    return element;
}

std::optional<Temperature> readTemperature(JsonReader &reader)
{
    if (reader.has("temperature_f") && reader.has("temperature_c"))
        reader.fail("temperature_f", "stands beside temperature_c; only one of the two may");
    if (const auto value = reader.optionalNumber("temperature_f", -60, 200))
        return Temperature{*value, false};
    if (const auto value = reader.optionalNumber("temperature_c", -50, 93))
        return Temperature{*value, true};
    return std::nullopt;
}

QJsonObject elementJson(const LoopElement &element)
{
    QJsonObject object{{"type", toText(element.type)}};
    if (element.type == ElementType::LoadCoil) {
        object.insert("millihenry", element.millihenry);
        if (element.ohms)
            object.insert("ohms", *element.ohms);
        return object;
    }
    if (element.wire.gaugeAwg != 0)
        object.insert("gauge_awg", element.wire.gaugeAwg);
    else
        object.insert("diameter_mm", element.wire.diameterMm);
    const bool feet = element.length.unit == LengthUnit::Foot;
    object.insert(feet ? "length_ft" : "length_m", element.length.value);
    if (element.capacitanceNfPerKm)
        object.insert("capacitance_nf_per_km", *element.capacitanceNfPerKm);
    return object;
}

/// One row as the object that a loop.json would have; a cell that is not a number stays a text, so
/// that the reader refuses it by name.
QJsonObject rowObject(const CsvTable &table, const CsvRow &row)
{
    QJsonObject object;
    for (const QString &column : table.header) {
        const QString cell = table.value(row, column);
        if (cell.isEmpty())
            continue;
        bool isNumber = false;
        const double number = cell.toDouble(&isNumber);
        const QString key = column == "element" ? QString("type") : column;
        object.insert(key, isNumber ? QJsonValue(number) : QJsonValue(cell));
    }
    return object;
}

Result<void> addRow(LoopMakeup &makeup, const CsvTable &table, const CsvRow &row,
                    const QString &fileName)
{
    const QString where = QString("%1, row %2").arg(fileName, QString::number(row.line));
    if (!row.trouble.isEmpty())
        return failure(ErrorCode::BadInput, row.trouble, where);
    JsonReader reader(rowObject(table, row), QString());
    if (const auto temperature = readTemperature(reader)) {
        if (makeup.temperature)
            reader.fail(temperature->celsius ? "temperature_c" : "temperature_f",
                        "stands in more than one row");
        makeup.temperature = temperature;
    }
    makeup.elements.push_back(readElement(reader));
    reader.done();
    auto result = reader.result();
    if (result)
        return {};
    Error error = result.error();
    const QString column = error.place == "type" ? QString("element") : error.place;
    error.place = QString("%1, column %2").arg(where, column);
    return failure(error);
}

} // namespace

QString Length::text() const
{
    return plain(value) + (unit == LengthUnit::Foot ? " ft" : " m");
}

QString Temperature::text() const
{
    return plain(value) + (celsius ? " °C" : " °F");
}

LoopElement LoopElement::section(Wire wire, Length length)
{
    LoopElement element;
    element.wire = wire;
    element.length = length;
    return element;
}

LoopElement LoopElement::tap(Wire wire, Length length)
{
    LoopElement element = section(wire, length);
    element.type = ElementType::BridgedTap;
    return element;
}

LoopElement LoopElement::coil(double millihenry, std::optional<double> ohms)
{
    LoopElement element;
    element.type = ElementType::LoadCoil;
    element.millihenry = millihenry;
    element.ohms = ohms;
    return element;
}

Text LoopElement::text() const
{
    switch (type) {
    case ElementType::Section:
        return Text(QT_TRANSLATE_NOOP("core", "section of %1, %2"))
            .arg(wire.text())
            .arg(length.text());
    case ElementType::BridgedTap:
        return Text(QT_TRANSLATE_NOOP("core", "bridged tap of %1, %2"))
            .arg(wire.text())
            .arg(length.text());
    case ElementType::LoadCoil:
        break;
    }
    return Text(QT_TRANSLATE_NOOP("core", "load coil of %1 mH")).arg(plain(millihenry));
}

QString lengthText(double feet, bool inMetres)
{
    return inMetres ? QString("%1 m").arg(feet * metresPerFoot, 0, 'f', 0)
                    : QString("%1 ft").arg(feet, 0, 'f', 0);
}

bool LoopMakeup::isMetric() const
{
    return std::any_of(elements.begin(), elements.end(), [](const LoopElement &element) {
        return element.type == ElementType::Section && element.length.unit == LengthUnit::Metre;
    });
}

double LoopMakeup::workingLengthFt() const
{
    double feet = 0;
    for (const LoopElement &element : elements)
        if (element.type == ElementType::Section)
            feet += element.length.feet();
    return feet;
}

double LoopMakeup::bridgedTapFt() const
{
    double feet = 0;
    for (const LoopElement &element : elements)
        if (element.type == ElementType::BridgedTap)
            feet += element.length.feet();
    return feet;
}

int LoopMakeup::loadCoils() const
{
    return int(std::count_if(elements.begin(), elements.end(), [](const LoopElement &element) {
        return element.type == ElementType::LoadCoil;
    }));
}

Text LoopMakeup::textAt(std::size_t index) const
{
    double feet = 0;
    bool metric = false;
    for (std::size_t i = 0; i < index; ++i) {
        if (elements[i].type != ElementType::Section)
            continue;
        feet += elements[i].length.feet();
        metric = metric || elements[i].length.unit == LengthUnit::Metre;
    }
    const bool isSection = elements[index].type == ElementType::Section;
    if (isSection && feet == 0)
        return Text(QT_TRANSLATE_NOOP("core", "%1, beginning at the office"))
            .arg(elements[index].text());
    return Text(isSection ? QT_TRANSLATE_NOOP("core", "%1, beginning %2 from the office")
                          : QT_TRANSLATE_NOOP("core", "%1, at %2 from the office"))
        .arg(elements[index].text())
        .arg(lengthText(feet, metric));
}

LoopMakeup LoopMakeup::without(const std::vector<std::size_t> &positions) const
{
    LoopMakeup rest = *this;
    rest.elements.clear();
    for (std::size_t i = 0; i < elements.size(); ++i)
        if (std::find(positions.begin(), positions.end(), i) == positions.end())
            rest.elements.push_back(elements[i]);
    return rest;
}

LoopMakeup LoopMakeup::read(JsonReader &reader)
{
    LoopMakeup makeup;
    makeup.temperature = readTemperature(reader);
    makeup.capacitanceNfPerKm = readCapacitance(reader);
    makeup.amplified = reader.optionalBoolean("amplified").value_or(false);
    if (reader.has("amplified") && !makeup.amplified)
        reader.fail("amplified", "is true or left out");
    const QJsonArray elements = reader.array("elements", maxElements);
    if (elements.isEmpty())
        reader.fail("elements", "must name at least one element");
    for (int i = 0; i < elements.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item("elements", i, elements[i]);
        makeup.elements.push_back(readElement(item));
        item.done();
    }
    return makeup;
}

Result<LoopMakeup> LoopMakeup::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    LoopMakeup makeup = read(reader);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return makeup;
}

QJsonObject LoopMakeup::toJson() const
{
    QJsonObject object;
    if (temperature)
        object.insert(temperature->celsius ? "temperature_c" : "temperature_f", temperature->value);
    if (capacitanceNfPerKm)
        object.insert("capacitance_nf_per_km", *capacitanceNfPerKm);
    if (amplified)
        object.insert("amplified", true);
    QJsonArray list;
    for (const LoopElement &element : elements)
        list << elementJson(element);
    object.insert("elements", list);
    return object;
}

CsvLayout makeupLayout()
{
    return {{"element"},
            {"gauge_awg", "diameter_mm", "length_ft", "length_m", "millihenry", "ohms",
             "capacitance_nf_per_km", "temperature_f", "temperature_c"},
            {}};
}

Result<LoopMakeup> LoopMakeup::fromCsv(const QByteArray &bytes, const QString &fileName)
{
    LOOPWRIGHT_ASSIGN(const auto table, readCsv(bytes, fileName, makeupLayout()));
    if (table.rows.empty() || table.rows.size() > maxElements)
        return failure(ErrorCode::BadInput, QString("must hold 1 to %1 elements").arg(maxElements),
                       fileName);
    LoopMakeup makeup;
    for (const CsvRow &row : table.rows)
        LOOPWRIGHT_TRY(addRow(makeup, table, row, fileName));
    return makeup;
}

} // namespace loopwright
