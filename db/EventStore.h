#pragma once
// The history as it was written; Transaction::commit alone adds to it. Whether it still agrees with
// the records is checkHistory's question (HistoryCheck.h).

#include "core/history/HistoryChain.h"
#include "core/history/StationLog.h"
#include "db/Database.h"

#include <functional>

namespace loopwright {

class Statement;

class EventStore
{
public:
    explicit EventStore(const Database &database)
        : m_database(database)
    {
    }

    /// In the order in which they were recorded, whichever circuit the order was for.
    Result<std::vector<Event>> ofOrder(const QString &order) const;
    Result<std::vector<Event>> ofCircuit(const QString &circuit) const;
    /// Of the register, of one kind.
    Result<std::vector<Event>> ofRegister(const QString &kind) const;
    /// How often the registers were changed of which a bundle tells.
    Result<qint64> registerChanges() const;
    /// One after the other in the order of the log, both places included; the first failure of
    /// `visit` ends it.
    Result<void> each(qint64 first, qint64 last,
                      const std::function<Result<void>(const Event &)> &visit) const;
    Result<qint64> count() const;
    /// Where the log of the station ends; its position is 0 if nothing was recorded yet. The
    /// station is the one that records now.
    Result<LogHead> logHead() const;
    /// The head of the log as it was when it ended with this event; nothing if it never did.
    Result<std::optional<LogHead>> headAt(qint64 position) const;
    /// Of each event of the log in these places the first `digits` of its digest, one after the
    /// other.
    Result<QString> logDigests(qint64 first, qint64 last, int digits) const;
    /// Where in the log an event of a chain stands; 0 if there is none.
    Result<qint64> placeInLog(const QString &subject, qint64 sequence) const;
    /// Length and last digest of a chain; an empty chain if there is none.
    Result<HistoryChain> chainOf(const QString &subject) const;

    /// The row-mapper of events; what their digest is taken over, and that, is readChain's.
    static Event read(const Statement &row);
    static Event readChain(const Statement &row);
    /// The same into the statement that adds one.
    static void bindChain(Statement &add, const Event &event);

private:
    const Database &m_database;
};

} // namespace loopwright
