#include "core/errortest/RunLog.h"

#include <QJsonArray>

#include <algorithm>

namespace loopwright {

qint64 RunLog::elapsed(const Moment &now) const
{
    if (!m_started)
        return 0;
    const Moment until = m_stopped.value_or(now);
    return std::clamp<qint64>((until.msUtc - m_started->msUtc) / 1000, 0, m_planned);
}

Moment RunLog::ended(const Moment &now) const
{
    if (m_imported)
        return m_started->plusSeconds(double(m_imported->size()));
    if (m_stopped && remaining(now) > 0)
        return *m_stopped;
    return m_started->plusSeconds(double(m_planned));
}

qint64 RunLog::secondOf(const Moment &now) const
{
    return std::clamp<qint64>(elapsed(now), 0, std::max<qint64>(m_planned - 1, 0));
}

/// Who types errors saw them before: they belong to the last whole second, and show at once.
void RunLog::addErrors(const Moment &now, qint64 count)
{
    m_errors.emplace_back(std::max<qint64>(elapsed(now) - 1, 0), count);
}

void RunLog::takeBack()
{
    if (!m_errors.empty())
        m_errors.pop_back();
}

bool RunLog::canGoOn(const Moment &now) const
{
    return stoppedEarly() && (now.msUtc - m_started->msUtc) / 1000 < m_planned;
}

void RunLog::goOn(const Moment &now)
{
    if (canGoOn(now))
        m_stopped.reset();
}

void RunLog::toggleSync(const Moment &now)
{
    m_sync.push_back(secondOf(now));
}

qint64 RunLog::notWatchedSeconds() const
{
    qint64 sum = 0;
    for (const Stretch &gap : gaps())
        sum += gap.seconds();
    return sum;
}

SecondList RunLog::seconds(const Moment &now) const
{
    if (m_imported)
        return *m_imported;
    const auto count = std::size_t(elapsed(now));
    std::vector<qint64> errors(count, 0);
    for (const auto &[second, bits] : m_errors)
        if (std::size_t(second) < count)
            errors[std::size_t(second)] += bits;
    SecondList list(errors.begin(), errors.end());
    for (std::size_t i = 0; i < m_sync.size(); i += 2) {
        const auto last = i + 1 < m_sync.size() ? std::size_t(m_sync[i + 1]) + 1 : count;
        for (auto second = std::size_t(m_sync[i]); second < std::min(last, count); ++second)
            list[second] = Second(std::nullopt);
    }
    return list;
}

QJsonObject RunLog::toJson() const
{
    if (!m_started && !m_imported)
        return {};
    QJsonObject object;
    if (m_started) {
        object.insert("started", m_started->text());
        object.insert("planned", m_planned);
    }
    if (m_stopped)
        object.insert("stopped", m_stopped->text());
    QJsonArray errors, sync;
    for (const auto &[second, bits] : m_errors)
        errors << QJsonArray{second, bits};
    for (const qint64 second : m_sync)
        sync << second;
    if (!errors.isEmpty())
        object.insert("errors", errors);
    if (!sync.isEmpty())
        object.insert("sync", sync);
    if (m_imported) {
        QJsonArray seconds;
        for (const Second second : *m_imported)
            seconds << (second.inSync() ? QJsonValue(second.bitErrors()) : QJsonValue());
        object.insert("seconds", seconds);
    }
    return object;
}

RunLog RunLog::fromJson(const QJsonObject &object)
{
    RunLog log;
    log.m_started = Moment::parse(object.value("started").toString());
    log.m_planned = object.value("planned").toInteger();
    log.m_stopped = Moment::parse(object.value("stopped").toString());
    for (const QJsonValue &entry : object.value("errors").toArray())
        log.m_errors.emplace_back(entry[0].toInteger(), entry[1].toInteger());
    for (const QJsonValue &entry : object.value("sync").toArray())
        log.m_sync.push_back(entry.toInteger());
    if (object.contains("seconds")) {
        SecondList seconds;
        for (const QJsonValue &entry : object.value("seconds").toArray())
            seconds.push_back(entry.isNull() ? Second(std::nullopt) : Second(entry.toInteger()));
        log.m_imported = std::move(seconds);
    }
    return log;
}

} // namespace loopwright
