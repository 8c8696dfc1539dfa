#include "core/history/Event.h"

#include "core/base/Json.h"

namespace loopwright {

QJsonObject Event::content() const
{
    return {{"subject", subject}, {"order", order},       {"by", by},
            {"at", at.text()},    {"kind", kind},         {"recorded_at", recordedAt.text()},
            {"detail", detail},   {"sequence", sequence}, {"previous", previous}};
}

QString Event::computedDigest() const
{
    return digestOf(content());
}

void Event::addSeals(const std::vector<Seal> &seals)
{
    if (seals.empty())
        return;
    QJsonArray list = detail.value("seals").toArray();
    for (const Seal &seal : seals)
        list << QJsonObject{{"row", seal.row}, {"id", seal.id}, {"digest", seal.digest}};
    detail.insert("seals", list);
}

std::vector<Seal> Event::seals() const
{
    std::vector<Seal> found;
    for (const QJsonValue value : detail.value("seals").toArray())
        found.push_back(
            {value["row"].toString(), value["id"].toString(), value["digest"].toString()});
    return found;
}

QString circuitSubject(const QString &circuitNumber)
{
    return "circuit:" + circuitNumber;
}

QString registerSubject()
{
    return QStringLiteral("register");
}

} // namespace loopwright
