#include "core/history/HistoryChain.h"

namespace loopwright {

HistoryChain::HistoryChain(QString subject, qint64 length, QString head)
    : m_subject(std::move(subject))
    , m_length(length)
    , m_head(std::move(head))
{
}

Event HistoryChain::append(Event event)
{
    event.subject = m_subject;
    event.sequence = ++m_length;
    event.previous = m_head;
    event.digest = event.computedDigest();
    m_head = event.digest;
    return event;
}

std::optional<QString> HistoryChain::follow(const Event &event)
{
    const qint64 expected = m_length + 1;
    const bool linked = event.previous == m_head;
    m_length = event.sequence;
    m_head = event.digest;
    if (event.subject != m_subject)
        return QString("belongs to %1").arg(event.subject);
    if (event.sequence != expected)
        return QString("event %1 was expected here").arg(expected);
    if (event.computedDigest() != event.digest)
        return QString("was changed after it was recorded");
    if (!linked)
        return QString("does not follow the event before it");
    return std::nullopt;
}

} // namespace loopwright
