#include "db/SqliteConnection.h"

#include "db/SqlCatalog.h"
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

namespace {

class SqliteStatement final : public PreparedStatement
{
public:
    SqliteStatement(const SqliteConnection &connection, sqlite3_stmt *handle, std::string label)
        : PreparedStatement(std::move(label), parametersOf(handle))
        , m_connection(connection)
        , m_handle(handle)
    {
        for (int i = 0; i < sqlite3_column_count(handle); ++i)
            m_columns.emplace_back(sqlite3_column_name(handle, i));
    }
    ~SqliteStatement() override { sqlite3_finalize(m_handle); }

    bool changesRows() const override { return sqlite3_stmt_readonly(m_handle) == 0; }
    const std::vector<std::string> &columns() override { return m_columns; }

    void bind(int parameter, qint64 value) override
    {
        sqlite3_bind_int64(m_handle, parameter, value);
    }
    void bind(int parameter, double value) override
    {
        sqlite3_bind_double(m_handle, parameter, value);
    }
    void bind(int parameter, QByteArrayView utf8) override
    {
        // A null pointer would become NULL, and an empty text is one.
        m_tooLong = sqlite3_bind_text64(m_handle, parameter, utf8.isNull() ? "" : utf8.data(),
                                        sqlite3_uint64(utf8.size()), SQLITE_TRANSIENT,
                                        SQLITE_UTF8) != SQLITE_OK ||
                    m_tooLong;
    }
    void bindNull(int parameter) override { sqlite3_bind_null(m_handle, parameter); }

    Result<bool> step() override
    {
        const int code = m_tooLong ? SQLITE_TOOBIG : sqlite3_step(m_handle);
        if (code == SQLITE_ROW)
            return true;
        if (code == SQLITE_DONE)
            return false;
        const QString doing = QString::fromStdString(label());
        return failure(m_tooLong ? sqliteError(code, {}, m_connection.path(), doing)
                                 : m_connection.lastError(doing));
    }
    qint64 changed() const override { return sqlite3_changes64(m_connection.handle()); }
    void rewind() override { sqlite3_reset(m_handle); }
    void clear() override
    {
        sqlite3_reset(m_handle);
        sqlite3_clear_bindings(m_handle);
        m_tooLong = false;
    }

    Type type(int column) const override { return Type(sqlite3_column_type(m_handle, column)); }
    QByteArrayView text(int column) const override
    {
        const auto *data = static_cast<const char *>(sqlite3_column_blob(m_handle, column));
        return {data, sqlite3_column_bytes(m_handle, column)};
    }
    qint64 integer(int column) const override { return sqlite3_column_int64(m_handle, column); }
    double real(int column) const override { return sqlite3_column_double(m_handle, column); }

private:
    static std::vector<std::string> parametersOf(sqlite3_stmt *handle)
    {
        std::vector<std::string> names;
        for (int i = 1; i <= sqlite3_bind_parameter_count(handle); ++i) {
            const char *name = sqlite3_bind_parameter_name(handle, i);
            names.emplace_back(name ? name + 1 : ""); // one of RawStatement's has no name
        }
        return names;
    }

    const SqliteConnection &m_connection;
    sqlite3_stmt *m_handle;
    std::vector<std::string> m_columns;
    bool m_tooLong = false;
};

} // namespace

SqliteConnection::SqliteConnection(const QString &path, QString name)
    : Connection(path)
    , m_name(std::move(name))
    , m_driver(QSqlDatabase::addDatabase("QSQLITE", m_name))
{
}

SqliteConnection::~SqliteConnection()
{
    forgetStatements();
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
    auto *connection = static_cast<SqliteConnection *>(self);
    if (tries == 0) {
        connection->m_waitedSince.start();
        connection->m_waitTold = false;
    }
    const qint64 waited = connection->m_waitedSince.elapsed();
    if (connection->isInterrupted() || waited >= connection->patienceMs())
        return 0;
    if (waited >= longWaitMs && !connection->m_waitTold) {
        connection->m_waitTold = true;
        connection->tellWaiting();
    }
    // By chance, and not longer with every try as SQLite's own: who has waited long would else find
    // the lock taken each time by somebody who just came.
    const int naps = 1 + QRandomGenerator::global()->bounded(tries < 10 ? 5 : 25);
    sqlite3_sleep(int(std::min<qint64>(naps, connection->patienceMs() - waited)));
    return 1;
}

bool SqliteConnection::inTransaction() const
{
    return sqlite3_get_autocommit(m_handle) == 0;
}

void SqliteConnection::breakOff()
{
    sqlite3_interrupt(m_handle);
}

const SqlCatalog &SqliteConnection::catalog() const
{
    return SqlCatalog::embedded();
}

Result<void> SqliteConnection::beginChange()
{
    return run("BEGIN IMMEDIATE", "begin");
}

Result<void> SqliteConnection::commit()
{
    const auto kept = run("COMMIT", "commit");
    // It may stand whole in the write-ahead log, and only not be synced: then who opens the records
    // after this process finds it there.
    if (!kept && (sqlite3_errcode(m_handle) & 0xff) == SQLITE_IOERR)
        return failure(ErrorCode::DiskTrouble,
                       "the disk failed at the last step, and the change may have been kept or "
                       "not: look whether it is there before it is entered again",
                       path());
    return kept;
}

Result<void> SqliteConnection::beginReading()
{
    return run("BEGIN; SELECT count(*) FROM sqlite_master", "snapshot");
}

void SqliteConnection::watchRows(RowNote note)
{
    m_rowNote = std::move(note);
    if (!m_rowNote) {
        sqlite3_update_hook(m_handle, nullptr, nullptr);
        return;
    }
    sqlite3_update_hook(
        m_handle,
        [](void *self, int, const char *, const char *table, sqlite3_int64 id) {
            static_cast<SqliteConnection *>(self)->m_rowNote(table, id);
        },
        this);
}

Result<QStringList> SqliteConnection::damagedPages()
{
    LOOPWRIGHT_ASSIGN(auto found, texts("PRAGMA integrity_check(20)"));
    // Where the first table that it comes upon is virtual, as the search index is, SQLite takes the
    // whole for a part, and passes by the list of free pages, which the next change would write on.
    LOOPWRIGHT_ASSIGN(const auto free, texts("PRAGMA integrity_check(sqlite_schema)"));
    found += free;
    found.removeAll("ok");
    found.removeDuplicates();
    return found;
}

Result<QStringList> SqliteConnection::brokenReferences()
{
    LOOPWRIGHT_ASSIGN(const auto broken,
                      texts("SELECT DISTINCT \"table\" FROM pragma_foreign_key_check LIMIT 20"));
    QStringList found;
    for (const QString &table : broken)
        found << "rows of " + table + " refer to something that is not there";
    return found;
}

Result<void> SqliteConnection::keepStatistics(bool all)
{
    return run(QByteArray("PRAGMA analysis_limit = 1000; ") + (all ? "ANALYZE" : "PRAGMA optimize"),
               "statistics");
}

Result<qint64> SqliteConnection::dataVersion()
{
    return number("PRAGMA data_version");
}

Result<void> SqliteConnection::forgetPages()
{
    return run("PRAGMA shrink_memory", "check");
}

qint64 SqliteConnection::rowsChanged() const
{
    return sqlite3_total_changes64(m_handle);
}

Error SqliteConnection::lastError(const QString &doing) const
{
    return sqliteError(m_handle, path(), doing);
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
    const std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)> statement(handle,
                                                                               &sqlite3_finalize);
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

Result<std::unique_ptr<PreparedStatement>> SqliteConnection::prepare(std::string_view label,
                                                                     const std::string &sql)
{
    sqlite3_stmt *handle = nullptr;
    if (sqlite3_prepare_v3(m_handle, sql.c_str(), int(sql.size()), SQLITE_PREPARE_PERSISTENT,
                           &handle, nullptr) != SQLITE_OK)
        return failure(lastError(QString::fromUtf8(label.data(), qsizetype(label.size()))));
    return std::make_unique<SqliteStatement>(*this, handle, std::string(label));
}

} // namespace loopwright
