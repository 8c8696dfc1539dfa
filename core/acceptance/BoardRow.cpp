#include "core/acceptance/BoardRow.h"

namespace loopwright {

QJsonObject OutAt::toJson() const
{
    return {{"station", station}, {"since", since.text()}};
}

QString awayText(const std::vector<OutAt> &out)
{
    QStringList lines;
    for (const OutAt &each : out)
        lines << each.since.text() + ' ' + each.station;
    return lines.join('\n');
}

std::vector<OutAt> awayFromText(const QString &text)
{
    std::vector<OutAt> out;
    for (const QString &line : text.split('\n', Qt::SkipEmptyParts)) {
        const qsizetype space = line.indexOf(' ');
        if (const auto since = Moment::parse(line.left(space)))
            out.push_back({line.mid(space + 1), *since});
    }
    return out;
}

QJsonObject BoardRow::toJson(QDate today) const
{
    const auto orNull = [](const QString &text) {
        return text.isEmpty() ? QJsonValue() : QJsonValue(text);
    };
    QJsonArray vans;
    for (const OutAt &each : out)
        vans << each.toJson();
    return {{"order_number", order},
            {"circuit_number", circuit},
            {"customer", customer},
            {"premises", premises},
            {"pair", pair},
            {"office", office},
            {"stage", toText(stage)},
            {"outcome", toText(outcome)},
            {"due_date", due.toString(Qt::ISODate)},
            {"first_due_date", promised.toString(Qt::ISODate)},
            {"late", isLate(today)},
            {"date_missed", isMissed(today)},
            {"installer", installer},
            {"installer_name", orNull(installerName)},
            {"kind", toText(kind)},
            {"criterion", orNull(criterion)},
            {"reason", reason},
            {"waiting_on", orNull(waitingOn)},
            {"paper_outstanding", paper},
            {"hazard", hazard},
            {"hazard_at", hazardAt ? QJsonValue(hazardAt->text()) : QJsonValue()},
            {"status", toText(status)},
            {"held", held},
            {"out", vans},
            {"conflicts", conflicts},
            {"found_in", QJsonArray::fromStringList(foundIn)}};
}

} // namespace loopwright
