#include "core/errortest/WatchedTime.h"

#include <QJsonArray>

#include <algorithm>

namespace loopwright {

void WatchedTime::watch(qint64 from, qint64 to)
{
    const auto place = std::ranges::lower_bound(m_stretches, from, {}, &Stretch::from);
    if (place != m_stretches.end() && place->from == from)
        place->to = std::max(place->to, to);
    else
        m_stretches.insert(place, {from, std::max(from, to)});
}

std::vector<Stretch> WatchedTime::gaps(qint64 until) const
{
    std::vector<Stretch> gaps;
    if (!m_started)
        return gaps;
    qint64 seen = 0;
    for (const Stretch &each : m_stretches) {
        if (each.from > seen && seen < until)
            gaps.push_back({seen, std::min(each.from, until)});
        seen = std::max(seen, each.to);
    }
    if (until - seen > mostBehind)
        gaps.push_back({seen, until});
    return gaps;
}

QJsonObject WatchedTime::toJson() const
{
    if (!m_started)
        return {};
    QJsonArray stretches;
    for (const Stretch &each : m_stretches)
        stretches << QJsonArray{each.from, each.to};
    return {{"started", m_started->text()}, {"watched", stretches}};
}

WatchedTime WatchedTime::fromJson(const QJsonObject &object)
{
    WatchedTime watched;
    watched.m_started = Moment::parse(object.value("started").toString());
    for (const QJsonValue &each : object.value("watched").toArray())
        watched.watch(each[0].toInteger(), each[1].toInteger());
    return watched;
}

} // namespace loopwright
