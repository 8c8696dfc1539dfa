#include "db/PostgresConnection.h"

#include "db/Migrator.h"
#include "db/PostgresReads.h"
#include "db/PostgresStatement.h"

#include <libpq-fe.h>

namespace loopwright {

namespace {

/// Of who writes; any number will do that no other program takes in this database.
constexpr qint64 writersLock = applicationId;

/// Of an address by keyword; nullptr if libpq cannot read it.
using Options = std::unique_ptr<PQconninfoOption, decltype(&PQconninfoFree)>;
Options optionsOf(const QString &address)
{
    return {PQconninfoParse(address.toUtf8().constData(), nullptr), &PQconninfoFree};
}

} // namespace

PostgresConnection::PostgresConnection(const QString &path, const QByteArray &address)
    : Connection(path)
    , m_session(address, path, [this] { return mayStart(); })
{
}

bool PostgresConnection::isAddress(const QString &path)
{
    return path.startsWith(u"postgresql://") || path.startsWith(u"postgres://");
}

QString PostgresConnection::shownAddress(const QString &address)
{
    QString host = QStringLiteral("localhost"), port, name;
    const Options options = optionsOf(address);
    for (const PQconninfoOption *each = options.get(); each && each->keyword; ++each) {
        if (!each->val || !*each->val)
            continue;
        const QString value = QString::fromUtf8(each->val);
        if (qstrcmp(each->keyword, "host") == 0)
            host = value;
        else if (qstrcmp(each->keyword, "port") == 0)
            port = ':' + value;
        else if (qstrcmp(each->keyword, "dbname") == 0)
            name = value;
    }
    return "postgresql://" + host + port + '/' + name;
}

Result<std::unique_ptr<PostgresConnection>> PostgresConnection::open(const QString &address)
{
    // libpq would repeat what it cannot read, and a password may stand there.
    if (!optionsOf(address))
        return failure(ErrorCode::DatabaseTrouble,
                       "is no address of a server; it reads postgresql://host:port/database, with "
                       "signs like @ and / in a name or password as %40 and %2F",
                       "postgresql://");
    std::unique_ptr<PostgresConnection> connection(
        new PostgresConnection(shownAddress(address), address.toUtf8()));
    LOOPWRIGHT_TRY(connection->m_session.connect());
    return connection;
}

const SqlCatalog &PostgresConnection::catalog() const
{
    return postgresCatalog();
}

Result<std::unique_ptr<PreparedStatement>> PostgresConnection::prepare(std::string_view label,
                                                                       const std::string &sql)
{
    return std::make_unique<PostgresStatement>(m_session, std::string(label), toPostgres(sql));
}

Result<void> PostgresConnection::run(const QByteArray &sql, const QString &doing)
{
    m_session.reads().forget({}); // whatever it writes
    m_session.noteWritten();
    LOOPWRIGHT_TRY(m_session.execute(sql, doing));
    return {};
}

Result<QStringList> PostgresConnection::texts(const QByteArray &sql)
{
    LOOPWRIGHT_ASSIGN(const auto answer, m_session.execute(sql, QString::fromUtf8(sql)));
    QStringList found;
    for (int i = 0; i < PQntuples(answer.get()); ++i)
        found << QString::fromUtf8(PQgetvalue(answer.get(), i, 0));
    return found;
}

bool PostgresConnection::inTransaction() const
{
    return m_session.inTransaction();
}

Result<void> PostgresConnection::tryToLock(int ms)
{
    // The rows that are written are noted in a table of the session, by a trigger.
    const auto locked = run("BEGIN ISOLATION LEVEL READ COMMITTED READ WRITE;"
                            "SET LOCAL lock_timeout = " +
                                QByteArray::number(ms) + "; SELECT pg_advisory_xact_lock(" +
                                QByteArray::number(writersLock) +
                                "); SET LOCAL lock_timeout = 0;"
                                "CREATE TEMPORARY TABLE IF NOT EXISTS written (place text,"
                                " id bigint, PRIMARY KEY (place, id)) ON COMMIT DELETE ROWS",
                            "begin");
    m_session.setWithin(locked.has_value());
    if (locked)
        m_session.reads().beginChange();
    else
        rollBack();
    return locked;
}

void PostgresConnection::foresee(const std::function<void()> &reads)
{
    PostgresReads &kept = m_session.reads();
    if (!kept.isKeeping() || kept.isForeseeing())
        return;
    constexpr int rounds = 3; // what is asked next hangs on what was answered
    for (int round = 0; round < rounds; ++round) {
        kept.beginForeseeing();
        reads();
        const auto wanted = kept.takeWanted();
        // What goes wrong is met again by whoever asks it.
        if (wanted.empty() || !m_session.askAll(wanted))
            return;
    }
}

Result<void> PostgresConnection::beginChange()
{
    LOOPWRIGHT_TRY(mayStart());
    LOOPWRIGHT_TRY(m_session.beConnected());
    const int first = std::min(patienceMs(), longWaitMs);
    const auto locked = tryToLock(first);
    if (locked || locked.error().code != ErrorCode::Busy || first == patienceMs())
        return locked;
    tellWaiting();
    return tryToLock(patienceMs() - first);
}

Result<void> PostgresConnection::commit()
{
    m_session.reads().endChange();
    LOOPWRIGHT_TRY(m_session.askLater(plainMessage("NOTIFY loopwright", "notify")));
    const auto done = run("COMMIT", "commit");
    m_session.setWithin(!done);
    return done;
}

Result<void> PostgresConnection::beginReading()
{
    const auto begun = run("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", "snapshot");
    m_session.setWithin(begun.has_value());
    return begun;
}

void PostgresConnection::rollBack()
{
    m_session.reads().endChange();
    m_session.forgetWaiting();
    // With the connection the server has ended it.
    if (!m_session.wasLost())
        Connection::rollBack();
    m_session.leave();
}

Result<void> PostgresConnection::tellWrittenRows()
{
    if (!m_session.takeWritten())
        return {};
    LOOPWRIGHT_ASSIGN(
        const auto answer,
        m_session.execute("DELETE FROM pg_temp.written RETURNING place, id", "written"));
    for (int i = 0; i < PQntuples(answer.get()); ++i)
        if (m_rowNote)
            m_rowNote(PQgetvalue(answer.get(), i, 0),
                      QByteArray(PQgetvalue(answer.get(), i, 1)).toLongLong());
    return {};
}

Result<void> PostgresConnection::keepStatistics(bool all)
{
    // Those that were outgrown the server counts by itself.
    return all ? run("ANALYZE", "statistics") : Result<void>();
}

Result<qint64> PostgresConnection::dataVersion()
{
    LOOPWRIGHT_TRY(m_session.beConnected());
    return m_session.news();
}

void PostgresConnection::breakOff()
{
    m_session.breakOff();
}

} // namespace loopwright
