#pragma once
// The records: one SQLite file, opened so that what was acknowledged survives a dead battery (WAL,
// synchronous=FULL, foreign keys on). A database has one connection and belongs to one thread; a
// second thread opens its own.
//
// Fails with DatabaseTrouble if the file is there and empty, is no database, is another program's,
// is damaged, locked, read-only or of a newer form (then it is left as it is), and with DiskTrouble
// if the disk refuses a write.

#include "core/base/Result.h"
#include "db/Migrator.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>

namespace loopwright {

class Connection;
class SqliteConnection;
struct ServerLogin;

class Database
{
public:
    enum class Access
    {
        ReadWrite, ///< made if it is missing, with its folder, and brought to the newest form
        ReadOnly   ///< must be there in a form that this program can read; a backup may be it
    };

    /// `path` is a file, ":memory:", or the address of a server (PostgresConnection.h). Before the
    /// first migration of a database that has contents a copy is made beside it:
    /// `path`.before-NNNN, NNNN being the migration.
    static Result<Database> open(const QString &path, Access access = Access::ReadWrite);
    static Result<Database> open(const QString &path, Access access, const Migrator &migrator);
    ~Database();
    Database(Database &&other) noexcept;
    Database &operator=(Database &&other) noexcept;

    QString path() const;
    Access access() const { return m_access; }
    /// What opening found or did.
    Migrator::Outcome outcome() const { return m_outcome; }

    /// Others had rights to the file until it was opened for writing; it took them away.
    bool wasOpenToOthers() const { return m_closed; }

    /// Reads the whole file (a few seconds for a gigabyte), and tells each damage, up to twenty of
    /// either kind: of the pages with all that lies in them, and rows that refer to none.
    Result<QStringList> damage() const;
    Result<QStringList> damagedPages() const;
    Result<QStringList> brokenReferences() const;
    /// DatabaseTrouble naming the first damage.
    Result<void> checkIntegrity() const;

    /// Which statistics SQLite's choice of an index goes by are counted anew.
    enum class Statistics
    {
        Outgrown, ///< of tables that have grown to many times what they were: seldom any
        All
    };
    /// Reads no more than some pages of each index, however large it is. Nothing where it is open
    /// for reading alone.
    Result<void> keepStatistics(Statistics which = Statistics::Outgrown);

    /// Where nobody looks at a window that stands still, milliseconds.
    static constexpr int longPatienceMs = 30'000;
    /// For how long a change waits for another program's lock, in milliseconds, and how long it did
    /// until now; as it was opened, 2,500. interrupt() ends a wait too.
    int setPatience(int ms);
    /// Called once in each wait that takes more than a second.
    void whenWaiting(std::function<void()> tell);

    /// From any thread: breaks off the statement that runs, and every later one as it starts, with
    /// Refused, until resume(). An open transaction can still be rolled back.
    void interrupt();
    void resume();

    /// Another number than before if another connection, of this program or another one, has
    /// changed the file since. Costs no read of it.
    Result<qint64> dataVersion() const;

    Connection &connection() const { return *m_connection; }
    /// Who is logged in on a server; nothing where the records are a file.
    std::optional<ServerLogin> login() const;
    /// Whether the records lie in a file (or in memory), and not on a server.
    bool isFile() const;
    /// For what is done with files alone.
    SqliteConnection &file() const;

private:
    static Result<Database> openOnServer(const QString &address, Access access);
    Database(std::unique_ptr<Connection> connection, Access access, Migrator::Outcome outcome);

    std::unique_ptr<Connection> m_connection;
    Access m_access;
    Migrator::Outcome m_outcome;
    bool m_closed = false;
};

/// Whether `path` is the address of a server that keeps records (PostgresConnection.h).
bool isServerAddress(const QString &path);
/// As messages show where records are: of an address host, port and database alone.
QString shownPlace(const QString &path);
/// What may be kept of an address: all but a password. A file stays as it is.
QString withoutPassword(const QString &path);

} // namespace loopwright
