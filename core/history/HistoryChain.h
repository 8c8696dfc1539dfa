#pragma once
// The chain of events of one subject: each holds the digest of the one before, so that none can be
// changed, left out or put in without breaking the chain. Without a secret the chain cannot stop a
// person who computes every later event and the head anew; it stops quiet edits.

#include "core/history/Event.h"

#include <optional>
#include <vector>

namespace loopwright {

class HistoryChain
{
public:
    /// An empty chain, or one that goes on after `length` events, the last having digest `head`.
    explicit HistoryChain(QString subject, qint64 length = 0, QString head = {});

    QString subject() const { return m_subject; }
    qint64 length() const { return m_length; }
    QString head() const { return m_head; } ///< digest of the last event; empty for an empty chain

    /// Gives the event its subject, sequence, previous digest and digest.
    Event append(Event event);

    /// Walks over a stored event. Nothing if it is the true next link, otherwise what is wrong
    /// in words. The walk goes on after a wrong link, so that one edit is reported once.
    std::optional<QString> follow(const Event &event);

private:
    QString m_subject;
    qint64 m_length;
    QString m_head;
};

} // namespace loopwright
