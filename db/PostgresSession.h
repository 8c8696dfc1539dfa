#pragma once
// One session with a PostgreSQL server, through libpq. It reads only, but in a transaction that
// says otherwise.
//
// A lost connection is made anew before the next statement outside a transaction; what was asked
// outside one is asked again by whoever asked. Within a transaction all is undone, which is said
// (ConnectionLost).

#include "core/base/Result.h"
#include "db/PostgresAnswer.h"

#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

struct pg_conn;
struct pg_result;

namespace loopwright {

class PostgresReads;
struct PostgresQuestion;

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
    /// One run of `text`, or of what was prepared under `name`.
    struct Run
    {
        const std::string *name; ///< null: `text` is sent
        const std::string *text;
        const std::vector<const char *> *values; ///< null: NULL
        const std::vector<unsigned> *types;      ///< OIDs; 0: the server finds out
    };
    Result<PostgresAnswer> send(const Run &run, const QString &doing);
    /// All at once, whose answers are kept. If one fails they are as if they had not been asked.
    Result<void> sendAll(const std::vector<PostgresQuestion> &questions);
    Result<void> prepare(const std::string &name, const std::string &text,
                         const std::vector<unsigned> &types, const QString &doing);

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

    /// Another number after each connection: what was prepared before is gone.
    int number() const { return m_number; }
    std::string newName() { return "s" + std::to_string(++m_named); }
    /// How often others told of a change, and how often it connected.
    qint64 news();
    void countChanged(qint64 rows) { m_rowsChanged += rows; }
    qint64 rowsChanged() const { return m_rowsChanged; }
    /// Ends what runs, from any thread.
    void breakOff();

private:
    Result<void> setUp();
    /// Ends the connection, which is then lost as if the server had ended it.
    Result<void> giveUp();
    Result<PostgresAnswer> checked(PostgresAnswer answer, const QString &doing);

    QByteArray m_address;
    QString m_path;
    std::function<Result<void>()> m_mayGoOn;
    pg_conn *m_handle = nullptr;
    bool m_within = false, m_lost = false, m_wrote = false;
    int m_number = 0, m_named = 0;
    qint64 m_rowsChanged = 0, m_news = 0, m_trips = 0;
    std::unique_ptr<PostgresReads> m_reads;
};

} // namespace loopwright
