#pragma once
// One connection to one SQLite file. Qt's driver opens and closes it; everything else goes through
// SQLite's own C interface on the driver's handle, which is four times as fast for many rows and
// tells every failure apart. Prepared statements are kept and lent out by label.

#include "core/base/Result.h"

#include <QElapsedTimer>
#include <QSqlDatabase>
#include <QStringList>

#include <atomic>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace loopwright {

/// A prepared statement with the names of its columns.
struct PreparedStatement
{
    PreparedStatement(sqlite3_stmt *prepared, std::string statementLabel);
    ~PreparedStatement();
    PreparedStatement(const PreparedStatement &) = delete;
    PreparedStatement &operator=(const PreparedStatement &) = delete;

    sqlite3_stmt *handle;
    std::string label;
    std::vector<std::string> columns;
};

class SqliteConnection
{
public:
    enum class Mode
    {
        ReadWrite, ///< made if it is missing; its folder must be there
        ReadOnly,
        Immutable, ///< read-only, in a folder that cannot be written: no locks, no journal
    };
    /// How long a statement waits for another program's lock, unless setPatience.
    static constexpr int usualPatienceMs = 2500;

    /// Opens the file; nothing is read from it yet. ":memory:" is a database that is gone at the
    /// end.
    static Result<std::unique_ptr<SqliteConnection>> open(const QString &path, Mode mode);
    ~SqliteConnection();
    SqliteConnection(const SqliteConnection &) = delete;
    SqliteConnection &operator=(const SqliteConnection &) = delete;

    sqlite3 *handle() const { return m_handle; }
    QString path() const { return m_path; }
    bool inTransaction() const;

    /// Runs one or several statements that give no rows.
    Result<void> run(const QByteArray &sql, const QString &doing);
    /// First column of every row as text, of the first row as a number or text; for PRAGMAs.
    Result<QStringList> texts(const QByteArray &sql);
    Result<qint64> number(const QByteArray &sql);
    Result<QString> text(const QByteArray &sql);

    /// A prepared statement of this label: one that is idle, or a new one from `sql`.
    Result<std::unique_ptr<PreparedStatement>> lend(std::string_view label, const std::string &sql);
    void giveBack(std::unique_ptr<PreparedStatement> statement);

    /// See Database.
    int setPatience(int ms) { return std::exchange(m_patienceMs, ms); }
    void whenWaiting(std::function<void()> tell) { m_waiting = std::move(tell); }
    /// See Database. SQLite alone forgets an interrupt that comes between two statements.
    void interrupt();
    void resume() { m_interrupted = false; }
    /// Refused, as long as an interrupt stands.
    Result<void> mayStart() const;

    Error lastError(const QString &doing) const;

private:
    SqliteConnection(QString path, QString name);
    /// SQLite's busy handler: `tries` counts within one wait. Nonzero: try again.
    static int waitForLock(void *self, int tries);

    QString m_path;
    QString m_name; ///< generated; Qt keeps connections by name
    QSqlDatabase m_driver;
    sqlite3 *m_handle = nullptr;
    std::atomic<bool> m_interrupted = false;
    int m_patienceMs = usualPatienceMs;
    std::function<void()> m_waiting;
    QElapsedTimer m_waitedSince;
    bool m_waitTold = false;
    std::map<std::string, std::vector<std::unique_ptr<PreparedStatement>>, std::less<>> m_idle;
};

/// Holds a read transaction, so that everything read under it shows one moment however long it
/// takes.
class ReadSnapshot
{
public:
    explicit ReadSnapshot(SqliteConnection &connection);
    ~ReadSnapshot();
    ReadSnapshot(const ReadSnapshot &) = delete;
    ReadSnapshot &operator=(const ReadSnapshot &) = delete;

    Result<void> result() const { return m_result; }

private:
    SqliteConnection &m_connection;
    bool m_started; ///< not if a transaction is open already, which does the same
    Result<void> m_result;
};

} // namespace loopwright
