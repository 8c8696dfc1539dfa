#pragma once
// One session with a PostgreSQL server, through libpq. It reads only, but in a transaction that
// says otherwise.
//
// What changes rows may wait, and goes with what is asked next: one trip to the server for both.
//
// A lost connection is made anew before the next statement outside a transaction; what was asked
// outside one is asked again by whoever asked. Within a transaction all is undone, which is said
// (ConnectionLost).

#include "core/base/Result.h"
#include "db/PostgresAnswer.h"
#include "db/PostgresPipeline.h"

#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace loopwright {

class PostgresSession
{
public:
    /// `address` is as libpq reads it (PostgreSQL 15, 34.1.1) and may hold a password; `path` is
    /// what messages say. `mayGoOn` is asked while a lost connection is tried again.
    PostgresSession(QByteArray address, QString path, std::function<Result<void>()> mayGoOn);
    ~PostgresSession();
    PostgresSession(const PostgresSession &) = delete;
    PostgresSession &operator=(const PostgresSession &) = delete;

    /// Connects, and looks whether the database is one that this program can keep records in:
    /// PostgreSQL 15 or newer, UTF-8, collation C of the libc.
    Result<void> connect();
    /// Before a statement: connects anew, for up to 30 s, if the connection was lost outside a
    /// transaction.
    Result<void> beConnected();

    /// One or several statements as they stand.
    Result<PostgresAnswer> execute(const QByteArray &sql, const QString &doing);
    Result<PostgresAnswer> ask(const PostgresMessage &message);
    /// Waits for what is asked next. What goes wrong with it comes out of that, and of all else
    /// until the transaction is undone.
    Result<void> askLater(PostgresMessage message);
    /// All at once, whose answers are kept. If one fails they are as if they had not been asked.
    Result<void> askAll(const std::vector<PostgresQuestion> &questions);
    /// Nothing waits any more, and nothing went wrong: what was begun is undone next.
    void forgetWaiting();

    bool inTransaction() const;
    /// One was begun; until it ends a lost connection is not made anew in silence.
    void setWithin(bool transaction) { m_within = transaction; }
    /// The connection ended within it: nothing is left to be undone.
    bool wasLost() const { return m_lost; }
    void leave() { m_within = m_lost = false; }
    PostgresReads &reads() { return *m_reads; }
    /// How often it waited for an answer.
    qint64 trips() const { return m_trips; }
    /// Something was written that is sealed, as far as is known; since it was asked last.
    void noteWritten() { m_wrote = true; }
    bool takeWritten() { return std::exchange(m_wrote, false); }

    /// For a cursor.
    std::string newName() { return "c" + std::to_string(++m_named); }
    /// How often others told of a change, and how often it connected.
    qint64 news();
    void countChanged(qint64 rows) { m_rowsChanged += rows; }
    /// What waits counts for a row each.
    qint64 rowsChanged() const;
    /// Ends what runs, from any thread.
    void breakOff();

private:
    Result<void> setUp();
    void closeHandle();
    Result<void> noTrouble();
    /// Ends the connection, which is then lost as if the server had ended it.
    tl::unexpected<Error> giveUp();
    Result<PostgresAnswer> askAlone(const PostgresMessage &message);
    Result<PostgresAnswer> checked(PostgresAnswer answer, const QString &doing);
    /// One trip for what waits and what comes now, whose answers it gives as they are.
    Result<std::vector<PostgresAnswer>> together(const std::vector<PostgresMessage> &now);

    QByteArray m_address;
    QString m_path;
    std::function<Result<void>()> m_mayGoOn;
    pg_conn *m_handle = nullptr;
    std::mutex m_handleLock; ///< while it becomes another one, and while it is broken off
    bool m_within = false, m_lost = false, m_wrote = false;
    int m_named = 0;
    qint64 m_rowsChanged = 0, m_news = 0, m_trips = 0;
    std::unique_ptr<PostgresReads> m_reads;
    PostgresPrepared m_prepared;
    std::vector<PostgresMessage> m_waiting;
    std::optional<Error> m_trouble; ///< of what waited
    bool m_troubleTold = false;
};

} // namespace loopwright
