#include "db/Database.h"

#include "db/FirstBytes.h"
#include "db/PostgresForm.h"
#include "db/PrivateFiles.h"
#include "db/SqliteConnection.h"
#include "db/SqliteCopy.h"

#include <QFileInfo>
#include <QUrl>
#include <QUrlQuery>

#include <sqlite3.h>
#include <utility>

namespace loopwright {

namespace {

using Access = Database::Access;
using Outcome = Migrator::Outcome;
using FileConnection = std::unique_ptr<SqliteConnection>;

const QString memoryPath = QStringLiteral(":memory:");

tl::unexpected<Error> trouble(const QString &path, const QString &message)
{
    return failure(ErrorCode::DatabaseTrouble, message, path);
}

// recursive_triggers: otherwise a REPLACE would delete rows past the triggers that refuse it.
Result<void> setUp(SqliteConnection &connection)
{
    return connection.run("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL;"
                          "PRAGMA recursive_triggers = ON; PRAGMA cell_size_check = ON;"
                          "PRAGMA cache_size = -65536",
                          "set up");
}

Result<void> useWriteAheadLog(SqliteConnection &connection)
{
    LOOPWRIGHT_ASSIGN(const auto mode, connection.text("PRAGMA journal_mode = WAL"));
    if (mode != "wal" && mode != "memory")
        return trouble(connection.path(), "the disk does not allow a write-ahead log");
    return {};
}

/// Makes a whole new database under another name first, so that a half-made one is never found,
/// and two programs that do it at the same time end with one.
Result<void> create(const QString &path, const Migrator &migrator)
{
    if (!makePrivateFolder(QFileInfo(path).absolutePath()))
        return trouble(path, "the folder of the database cannot be made");
    const QString unfinished = beginUnfinished(path);
    const auto made = [&]() -> Result<void> {
        LOOPWRIGHT_ASSIGN(const auto connection,
                          SqliteConnection::open(unfinished, SqliteConnection::Mode::ReadWrite));
        LOOPWRIGHT_TRY(setUp(*connection));
        LOOPWRIGHT_TRY(migrator.apply(*connection, [](int) { return Result<void>(); }));
        return useWriteAheadLog(*connection);
    }();
    if (!made) {
        removeDatabaseFiles(unfinished);
        Error error = made.error();
        error.place = path;
        return failure(error);
    }
    return putInPlace(unfinished, path, PutMode::KeepOther);
}

Result<void> checkFirstBytes(const QString &path)
{
    const QFileInfo info(path);
    if (!info.isFile())
        return trouble(path, "is not a file");
    const QByteArray magic("SQLite format 3\0", 16);
    LOOPWRIGHT_ASSIGN(const auto start, firstBytes(path, int(magic.size())));
    // To SQLite it is a database without tables; records that were cut to nothing would be lost in
    // silence.
    if (start.isEmpty())
        return trouble(path, "is empty, and was not taken for new records; remove it to begin "
                             "anew, or restore a backup");
    if (start != magic.left(start.size()))
        return trouble(path, "is not a database");
    if (start.size() < magic.size())
        return trouble(path, "the database is cut short; restore it from a backup");
    return {};
}

/// The files beside it are made by SQLite with the rights of the database.
bool closeDatabaseToOthers(const QString &path)
{
    bool any = false;
    for (const char *ending : {"", "-wal", "-shm"})
        any = closeToOthers(path + QLatin1StringView(ending)) || any;
    return any;
}

bool folderCanBeWritten(const QString &path)
{
    return QFileInfo(QFileInfo(path).absolutePath()).isWritable();
}

/// Nothing stands in it that the database does not hold, and nobody is about to write.
bool logIsEmpty(const QString &path)
{
    return QFileInfo(path + "-wal").size() == 0; // also if it is not there
}

/// Opens the file to be read. In a folder that cannot be written, and on a full disk, there is no
/// room for the files through which readers and writers see each other.
Result<FileConnection> connectToRead(const QString &path)
{
    using Mode = SqliteConnection::Mode;
    if (!folderCanBeWritten(path) && !QFileInfo::exists(path + "-wal"))
        return SqliteConnection::open(path, Mode::Immutable);
    LOOPWRIGHT_ASSIGN(auto connection, SqliteConnection::open(path, Mode::ReadOnly));
    const auto schema = connection->number("PRAGMA schema_version");
    if (!schema && schema.error().code == ErrorCode::DiskTrouble && logIsEmpty(path))
        return SqliteConnection::open(path, Mode::Immutable);
    return connection;
}

Result<FileConnection> connect(const QString &path, Access access)
{
    return access == Access::ReadOnly
               ? connectToRead(path)
               : SqliteConnection::open(path, SqliteConnection::Mode::ReadWrite);
}

/// Files up to this size are read through when they are opened; larger ones by checkIntegrity
/// alone. `PRAGMA quick_check` of 13 MB took 50 to 70 ms on two busy cores.
constexpr qint64 mostCheckedAtOpening = 32'000'000;

Result<void> checkPages(SqliteConnection &connection)
{
    if (QFileInfo(connection.path()).size() > mostCheckedAtOpening)
        return {};
    LOOPWRIGHT_ASSIGN(const auto whole, connection.text("PRAGMA quick_check(1)"));
    if (whole != u"ok")
        return trouble(connection.path(), "is damaged and was left as it is; restore a backup (" +
                                              whole.simplified().left(200) + ")");
    return {};
}

/// Reads the header and the schema: finds a file that is no database, cut short, damaged, locked
/// or of another program.
Result<void> checkHeader(SqliteConnection &connection, Access access)
{
    const auto schema = connection.number("PRAGMA schema_version");
    if (!schema) {
        Error error = schema.error();
        if (!folderCanBeWritten(connection.path()))
            error.message = "the folder of the database cannot be written";
        return failure(error);
    }
    const auto tables = connection.number("SELECT count(*) FROM sqlite_master");
    const auto application = connection.number("PRAGMA application_id");
    if (!tables || !application)
        return failure(tables ? application.error() : tables.error());
    const bool empty = *tables == 0 && *application == 0;
    const bool backup = *application == backupApplicationId;
    if (*application != applicationId && !backup && !empty)
        return trouble(connection.path(), "is a database of another program");
    if (backup && access == Access::ReadWrite)
        return trouble(connection.path(), "is a backup and is not worked in; restore it");
    if (empty && connection.path() != memoryPath)
        return trouble(connection.path(), "is an empty database");
    if (access == Access::ReadWrite && sqlite3_db_readonly(connection.handle(), "main") == 1)
        return trouble(connection.path(), "the database cannot be written: it is read-only");
    return empty ? Result<void>() : checkPages(connection);
}

Result<Outcome> bringUpToDate(SqliteConnection &connection, Access access, const Migrator &migrator)
{
    const auto found = migrator.look(connection);
    if (!found)
        return found;
    const bool newer = *found == Outcome::NewerReadable || *found == Outcome::NewerUnreadable;
    if (*found == Outcome::NewerUnreadable || (newer && access == Access::ReadWrite))
        return trouble(connection.path(),
                       "was written by a newer version of this program, and was left as it is");
    if (access == Access::ReadWrite)
        return migrator.apply(connection, [&](int number) {
            const QString copy =
                connection.path() + QString(".before-%1").arg(number, 4, 10, QChar('0'));
            const QString unfinished = beginUnfinished(copy);
            auto copied = copyDatabase(connection, unfinished, applicationId);
            return copied ? putInPlace(unfinished, copy, PutMode::Replace) : copied;
        });
    if (*found == Outcome::Older)
        return trouble(connection.path(),
                       "is of an older form; open it once for writing to bring it up to date");
    return found;
}

} // namespace

Database::Database(std::unique_ptr<Connection> connection, Access access, Migrator::Outcome outcome)
    : m_connection(std::move(connection))
    , m_access(access)
    , m_outcome(outcome)
{
}

Database::~Database() = default;
Database::Database(Database &&other) noexcept = default;
Database &Database::operator=(Database &&other) noexcept = default;

bool isServerAddress(const QString &path)
{
    return PostgresConnection::isAddress(path);
}

QString shownPlace(const QString &path)
{
    return isServerAddress(path) ? PostgresConnection::shownAddress(path) : path;
}

QString withoutPassword(const QString &path)
{
    if (!isServerAddress(path))
        return path;
    QUrl address(path);
    address.setPassword(QString());
    QUrlQuery parameters(address);
    for (const char *secret : {"password", "sslpassword"})
        parameters.removeAllQueryItems(QString::fromLatin1(secret));
    address.setQuery(parameters);
    return address.toString(QUrl::FullyEncoded);
}

bool Database::isFile() const
{
    return dynamic_cast<SqliteConnection *>(m_connection.get()) != nullptr;
}

SqliteConnection &Database::file() const
{
    Q_ASSERT(isFile());
    return static_cast<SqliteConnection &>(*m_connection);
}

QString Database::path() const
{
    return m_connection->path();
}

int Database::setPatience(int ms)
{
    return m_connection->setPatience(ms);
}

void Database::whenWaiting(std::function<void()> tell)
{
    m_connection->whenWaiting(std::move(tell));
}

void Database::interrupt()
{
    m_connection->interrupt();
}

void Database::resume()
{
    m_connection->resume();
}

Result<Database> Database::open(const QString &path, Access access)
{
    if (PostgresConnection::isAddress(path))
        return openOnServer(path, access);
    LOOPWRIGHT_ASSIGN(const auto migrator, Migrator::embedded());
    return open(path, access, migrator);
}

Result<Database> Database::openOnServer(const QString &address, Access access)
{
    LOOPWRIGHT_ASSIGN(const auto migrator, Migrator::embedded("postgresql/migrations"));
    LOOPWRIGHT_ASSIGN(auto connection, PostgresConnection::open(address));
    LOOPWRIGHT_ASSIGN(const auto outcome,
                      bringServerUpToDate(*connection, access == Access::ReadWrite, migrator));
    LOOPWRIGHT_TRY(connection->readLogin(access == Access::ReadWrite));
    return Database(std::move(connection), access, outcome);
}

Result<Database> Database::open(const QString &given, Access access, const Migrator &migrator)
{
    // The log lies beside what a link points at, not beside the link.
    const QFileInfo info(given);
    const QString path = info.isSymLink() && info.exists() ? info.canonicalFilePath() : given;
    bool created = false, closed = false;
    if (path != memoryPath) {
        if (!QFileInfo::exists(path)) {
            if (access == Access::ReadOnly)
                return trouble(path, "does not exist");
            LOOPWRIGHT_TRY(create(path, migrator));
            created = true;
        }
        LOOPWRIGHT_TRY(checkFirstBytes(path));
        closed = access == Access::ReadWrite && closeDatabaseToOthers(path);
    }
    LOOPWRIGHT_ASSIGN(auto connection, connect(path, access));
    LOOPWRIGHT_TRY(checkHeader(*connection, access));
    LOOPWRIGHT_TRY(setUp(*connection));
    LOOPWRIGHT_ASSIGN(const auto outcome, bringUpToDate(*connection, access, migrator));
    if (access == Access::ReadWrite)
        LOOPWRIGHT_TRY(useWriteAheadLog(*connection));
    Database database(std::move(connection), access, created ? Outcome::Created : outcome);
    database.m_closed = closed;
    return database;
}

Result<qint64> Database::dataVersion() const
{
    return m_connection->dataVersion();
}

Result<void> Database::keepStatistics(Statistics which)
{
    if (m_access == Access::ReadOnly)
        return {};
    return m_connection->keepStatistics(which == Statistics::All);
}

std::optional<ServerLogin> Database::login() const
{
    return m_connection->login();
}

Result<QStringList> Database::damage() const
{
    LOOPWRIGHT_ASSIGN(auto found, damagedPages());
    LOOPWRIGHT_ASSIGN(const auto broken, brokenReferences());
    return found + broken;
}

Result<QStringList> Database::damagedPages() const
{
    return m_connection->damagedPages();
}

Result<QStringList> Database::brokenReferences() const
{
    return m_connection->brokenReferences();
}

Result<void> Database::checkIntegrity() const
{
    LOOPWRIGHT_ASSIGN(const auto found, damage());
    if (!found.isEmpty())
        return trouble(path(), "the database is damaged (" + found.front().simplified() +
                                   "); restore it from a backup");
    return {};
}

} // namespace loopwright
