#pragma once
// One unit of change. It begins by taking the write lock, so that what is read in it stays true
// until it ends, and it rolls back unless a commit worked. A commit needs the event that says what
// was done; event and change are in the records together or not at all.
//
// The stores tell the transaction which rows they wrote that have a digest of their own (`seal`);
// the commit puts these seals into the event of the same subject, and refuses if a subject has rows
// and no event. Every row that was written, in whatever table, is also sealed in the log of the
// station (RowSeals.h), with the first event that comes after it.

#include "core/history/Event.h"
#include "core/history/StationLog.h"
#include "db/RowSeals.h"
#include "db/WriteLock.h"

#include <map>
#include <vector>

namespace loopwright {

class Transaction : public WriteLock
{
public:
    /// DatabaseTrouble if another program holds the lock longer than the busy timeout.
    static Result<Transaction> begin(Database &database);

    /// Puts the event at the end of its subject's chain and commits. The event needs subject, by,
    /// kind and at; its place in the chain and the time of recording are filled in. DiskTrouble
    /// says in words whether nothing was changed or that cannot be told.
    Result<void> commit(const Event &event);
    /// Several events, for a change that concerns several circuits; at least one, unless some were
    /// recorded.
    Result<void> commit(const std::vector<Event> &events);
    /// Puts the event at the end of its chain already, for work of many steps that would otherwise
    /// keep all of them until the end. It counts when the transaction is committed, not before.
    Result<void> record(const Event &event);
    /// Whether some were recorded already, so that there is something to commit.
    bool hasEvents() const { return m_hasEvents; }
    /// Commits a change of drafts, which have no history. Refused if anything else was changed.
    Result<void> commitDraft();

    // For the stores.
    void seal(const QString &subject, const Seal &seal);
    void countDraftChanges(qint64 rows) { m_draftChanges += rows; }

private:
    explicit Transaction(WriteLock lock);
    Result<void> append(Event event);
    /// The head of the log as it stands in the transaction.
    Result<void> readHead();
    /// After the last event; where the connection to a server ended meanwhile, whether it is there.
    Result<void> keepEvents();
    Result<void> lookAfterLoss(const Error &lost);
    /// Gives the event its place in the log; the rows that it seals there.
    Result<QByteArray> appendToLog(Event &event);

    bool m_hasEvents = false;           ///< recorded before the commit
    std::optional<Moment> m_recordedAt; ///< one for all events of the transaction
    qint64 m_changesBefore;
    qint64 m_draftChanges = 0;
    std::map<QString, std::vector<Seal>> m_seals; ///< by subject
    std::unique_ptr<RowWatch> m_rows;
    std::optional<LogHead> m_head;
};

} // namespace loopwright
