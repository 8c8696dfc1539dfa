#include "core/office/Office.h"

#include <QStringList>

#include <algorithm>

namespace loopwright {

namespace {

constexpr auto dayFormat = "yyyy-MM-dd";
const QString notRequired = QStringLiteral("not_required");

} // namespace

std::optional<QList<TestLine>> testLinesFromText(const QString &text)
{
    QList<TestLine> lines;
    for (const QString &entry : text.split(';', Qt::SkipEmptyParts)) {
        const QString label = entry.section('=', 0, 0).trimmed();
        const QString number = entry.section('=', 1).trimmed();
        const bool twice = std::any_of(lines.begin(), lines.end(), [&label](const TestLine &line) {
            return line.label == label;
        });
        if (label.isEmpty() || number.isEmpty() || twice)
            return std::nullopt;
        lines << TestLine{label, UnpublishedNumber(number)};
    }
    return lines;
}

QJsonObject ServingOffice::toJson() const
{
    return {
        {"office", key},      {"name", name},           {"protocol_variant", protocolVariant},
        {"address", address}, {"telephone", telephone}, {"trouble_telephone", troubleTelephone}};
}

QJsonObject Issuer::toJson() const
{
    return {{"name", name},
            {"address", address},
            {"telephone", telephone},
            {"trouble_telephone", troubleTelephone},
            {"trouble_hours", troubleHours}};
}

bool Instrument::calibratedOn(QDate day) const
{
    return std::any_of(calibrations.begin(), calibrations.end(),
                       [day](const Calibration &calibration) { return calibration.holdsOn(day); });
}

QJsonObject Calibration::toJson() const
{
    return {{"on", on.toString(dayFormat)}, {"due", due ? due->toString(dayFormat) : notRequired}};
}

Calibration Calibration::read(JsonReader &reader)
{
    const QString on = reader.text("on"), due = reader.text("due");
    Calibration calibration{QDate::fromString(on, dayFormat), {}};
    if (due != notRequired)
        calibration.due = QDate::fromString(due, dayFormat);
    if (!on.isEmpty() && !calibration.on.isValid())
        reader.fail("on", "must be a day as YYYY-MM-DD");
    if (calibration.due && !calibration.due->isValid())
        reader.fail("due", "must be a day as YYYY-MM-DD, or not_required");
    return calibration;
}

QJsonObject Instrument::toJson() const
{
    QJsonArray list;
    for (const Calibration &calibration : calibrations)
        list << calibration.toJson();
    return {{"instrument", key},
            {"serial", serial},
            {"kind", kind},
            {"calibrations", list},
            {"as_labelled", asLabelled}};
}

Instrument Instrument::read(JsonReader &reader)
{
    Instrument instrument{
        reader.text("instrument"), reader.text("serial"), reader.text("kind"), {}};
    instrument.asLabelled = reader.optionalBoolean("as_labelled").value_or(false);
    const QJsonArray list = reader.array("calibrations", 10000);
    for (int i = 0; i < list.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item("calibrations", i, list[i]);
        instrument.calibrations << Calibration::read(item);
        item.done();
    }
    return instrument;
}

QString nameOf(const Person &person)
{
    return person.name.isEmpty() ? person.key : person.name;
}

QString nameOf(const QList<Person> &people, const QString &key)
{
    const auto found = std::ranges::find(people, key, &Person::key);
    return found == people.end() ? key : nameOf(*found);
}

bool isRegistered(const QList<Person> &people, const QString &key)
{
    return std::ranges::any_of(people, [&key](const Person &each) { return each.key == key; });
}

QString markedNameOf(const QList<Person> &people, const QString &key)
{
    return key.isEmpty() || isRegistered(people, key) ? nameOf(people, key)
                                                      : key + " (not registered)";
}

} // namespace loopwright
