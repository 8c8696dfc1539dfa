#include "db/SqliteConnection.h"

#include "db/SqliteError.h"

#include <QRandomGenerator>
#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <QUuid>
#include <QVariant>

#include <algorithm>
#include <sqlite3.h>

namespace loopwright {

PreparedStatement::PreparedStatement(sqlite3_stmt *prepared, std::string statementLabel)
    : handle(prepared)
    , label(std::move(statementLabel))
{
    for (int i = 0; i < sqlite3_column_count(handle); ++i)
        columns.emplace_back(sqlite3_column_name(handle, i));
}

PreparedStatement::~PreparedStatement()
{
    sqlite3_finalize(handle);
}

SqliteConnection::SqliteConnection(QString path, QString name)
    : m_path(std::move(path))
    , m_name(std::move(name))
    , m_driver(QSqlDatabase::addDatabase("QSQLITE", m_name))
{
}

SqliteConnection::~SqliteConnection()
{
    m_idle.clear();
    m_driver.close();
    m_driver = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Result<std::unique_ptr<SqliteConnection>> SqliteConnection::open(const QString &path, Mode mode)
{
    const QString name = "loopwright-" + QUuid::createUuid().toString(QUuid::WithoutBraces);
    std::unique_ptr<SqliteConnection> connection(new SqliteConnection(path, name));
    QSqlDatabase &driver = connection->m_driver;
    if (!driver.isValid())
        return failure(ErrorCode::DatabaseTrouble, "the SQLite driver of Qt is not installed",
                       path);
    QStringList options;
    driver.setDatabaseName(path);
    if (mode != Mode::ReadWrite)
        options << "QSQLITE_OPEN_READONLY";
    if (mode == Mode::Immutable) {
        options << "QSQLITE_OPEN_URI";
        driver.setDatabaseName(QString::fromLatin1(QUrl::fromLocalFile(path).toEncoded()) +
                               "?immutable=1");
    }
    driver.setConnectOptions(options.join(';'));
    if (!driver.open())
        return failure(sqliteError(driver.lastError().nativeErrorCode().toInt(),
                                   driver.lastError().databaseText(), path, "open"));
    connection->m_handle = *static_cast<sqlite3 *const *>(driver.driver()->handle().constData());
    sqlite3_busy_handler(connection->m_handle, &SqliteConnection::waitForLock, connection.get());
    return connection;
}

int SqliteConnection::waitForLock(void *self, int tries)
{
    constexpr qint64 longWaitMs = 1000;
    auto *connection = static_cast<SqliteConnection *>(self);
    if (tries == 0) {
        connection->m_waitedSince.start();
        connection->m_waitTold = false;
    }
    const qint64 waited = connection->m_waitedSince.elapsed();
    if (connection->m_interrupted || waited >= connection->m_patienceMs)
        return 0;
    if (waited >= longWaitMs && !connection->m_waitTold) {
        connection->m_waitTold = true;
        if (connection->m_waiting)
            connection->m_waiting();
    }
    // By chance, and not longer with every try as SQLite's own: who has waited long would else find
    // the lock taken each time by somebody who just came.
    const int naps = 1 + QRandomGenerator::global()->bounded(tries < 10 ? 5 : 25);
    sqlite3_sleep(int(std::min<qint64>(naps, connection->m_patienceMs - waited)));
    return 1;
}

bool SqliteConnection::inTransaction() const
{
    return sqlite3_get_autocommit(m_handle) == 0;
}

void SqliteConnection::interrupt()
{
    m_interrupted = true;
    sqlite3_interrupt(m_handle);
}

Result<void> SqliteConnection::mayStart() const
{
    if (m_interrupted)
        return failure(sqliteError(SQLITE_INTERRUPT, {}, m_path, {}));
    return {};
}

Error SqliteConnection::lastError(const QString &doing) const
{
    return sqliteError(m_handle, m_path, doing);
}

Result<void> SqliteConnection::run(const QByteArray &sql, const QString &doing)
{
    if (sqlite3_exec(m_handle, sql.constData(), nullptr, nullptr, nullptr) != SQLITE_OK)
        return failure(lastError(doing));
    return {};
}

Result<QStringList> SqliteConnection::texts(const QByteArray &sql)
{
    sqlite3_stmt *handle = nullptr;
    if (sqlite3_prepare_v2(m_handle, sql.constData(), -1, &handle, nullptr) != SQLITE_OK)
        return failure(lastError(QString::fromUtf8(sql)));
    const PreparedStatement statement(handle, {});
    QStringList found;
    for (;;) {
        const int code = sqlite3_step(handle);
        if (code == SQLITE_DONE)
            return found;
        if (code != SQLITE_ROW)
            return failure(lastError(QString::fromUtf8(sql)));
        found << QString::fromUtf8(reinterpret_cast<const char *>(sqlite3_column_text(handle, 0)));
    }
}

Result<QString> SqliteConnection::text(const QByteArray &sql)
{
    LOOPWRIGHT_ASSIGN(const auto found, texts(sql));
    return found.value(0);
}

Result<qint64> SqliteConnection::number(const QByteArray &sql)
{
    LOOPWRIGHT_ASSIGN(const auto found, text(sql));
    return found.toLongLong();
}

Result<std::unique_ptr<PreparedStatement>> SqliteConnection::lend(std::string_view label,
                                                                  const std::string &sql)
{
    const auto idle = m_idle.find(label);
    if (idle != m_idle.end() && !idle->second.empty()) {
        auto statement = std::move(idle->second.back());
        idle->second.pop_back();
        return statement;
    }
    sqlite3_stmt *handle = nullptr;
    if (sqlite3_prepare_v3(m_handle, sql.c_str(), int(sql.size()), SQLITE_PREPARE_PERSISTENT,
                           &handle, nullptr) != SQLITE_OK)
        return failure(lastError(QString::fromUtf8(label.data(), qsizetype(label.size()))));
    return std::make_unique<PreparedStatement>(handle, std::string(label));
}

void SqliteConnection::giveBack(std::unique_ptr<PreparedStatement> statement)
{
    sqlite3_reset(statement->handle);
    sqlite3_clear_bindings(statement->handle);
    m_idle[statement->label].push_back(std::move(statement));
}

ReadSnapshot::ReadSnapshot(SqliteConnection &connection)
    : m_connection(connection)
    , m_started(!connection.inTransaction())
{
    if (m_started)
        m_result = connection.run("BEGIN; SELECT count(*) FROM sqlite_master", "snapshot");
}

ReadSnapshot::~ReadSnapshot()
{
    if (m_started && m_connection.inTransaction())
        (void)m_connection.run("ROLLBACK", "snapshot");
}

} // namespace loopwright
