#include "db/Backup.h"

#include "db/EventStore.h"
#include "db/FirstBytes.h"
#include "db/HistoryCheck.h"
#include "db/MetaStore.h"
#include "db/PrivateFiles.h"
#include "db/SqliteConnection.h"
#include "db/Transaction.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include <unistd.h>

namespace loopwright {

namespace {

Result<void> readThrough(const Database &database, const QString &named)
{
    LOOPWRIGHT_ASSIGN(const auto findings, checkHistory(database)); // of the pages too
    if (!findings.faults.empty()) {
        const HistoryFault &first = findings.faults.front();
        if (first.subject == "database")
            return failure(ErrorCode::DatabaseTrouble,
                           QString("the database is damaged (%1)").arg(first.what.simplified()),
                           named);
        return failure(ErrorCode::DatabaseTrouble,
                       QString("the history is broken (%1 event %2: %3)")
                           .arg(first.subject)
                           .arg(first.event)
                           .arg(first.what),
                       named);
    }
    return {};
}

/// Opens a copy that is not in its place yet, and reads it through. Opened for writing, a copy of
/// an older form is brought up to date first.
Result<Database> openCopy(const QString &unfinished, const QString &named, Database::Access access)
{
    auto copy = Database::open(unfinished, access);
    if (!copy)
        return failure(Error{copy.error().code, copy.error().message, named});
    LOOPWRIGHT_TRY(readThrough(*copy, named));
    return copy;
}

/// Only a backup is replaced: not the records of another station, and nothing of another program.
Result<void> checkReplaced(const QString &path)
{
    // What SQLite keeps beside a database: it would take the backup for that, and remove it.
    if (databaseBeside(path))
        return failure(ErrorCode::Usage,
                       "is a name that a database gives to what it keeps beside it", path);
    if (!QFileInfo::exists(path))
        return {};
    if (!QFileInfo(path).isFile())
        return failure(ErrorCode::Usage, "is no file, and nothing is written onto it", path);
    if (isBackup(path))
        return {};
    return failure(ErrorCode::Usage, "is there already, and is not a backup; it was left as it is",
                   path);
}

/// What is restored becomes a station of its own: the one that it was copied from may still work.
Result<void> startStation(Database &database, Event event)
{
    LOOPWRIGHT_ASSIGN(const auto before, EventStore(database).logHead());
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(database));
    LOOPWRIGHT_TRY(MetaStore::drawStation(transaction));
    LOOPWRIGHT_ASSIGN(const auto station, MetaStore(database).station());
    event.subject = registerSubject();
    event.kind = "restored";
    event.detail = {{"head", before.toJson()}, {"station", station}};
    return transaction.commit(event);
}

/// Only the file itself is put in its place. Closing writes the log into it too, but does not tell
/// if the disk refuses that.
Result<void> intoOneFile(SqliteConnection &copy)
{
    LOOPWRIGHT_ASSIGN(const auto mode, copy.text("PRAGMA journal_mode = DELETE"));
    if (mode != "delete")
        return failure(ErrorCode::DatabaseTrouble, "its log cannot be written into it",
                       copy.path());
    return {};
}

/// A file of no bytes is a database to SQLite, and would be brought up to date as records that hold
/// nothing.
Result<void> refuseEmpty(SqliteConnection &source)
{
    LOOPWRIGHT_ASSIGN(const auto tables, source.number("SELECT count(*) FROM sqlite_master"));
    if (tables == 0)
        return failure(ErrorCode::DatabaseTrouble, "is empty, and no backup of any records",
                       source.path());
    return {};
}

/// A trigger that is not ours would run in every later work with the records.
Result<void> refuseForeign(SqliteConnection &source)
{
    LOOPWRIGHT_ASSIGN(const auto application, source.number("PRAGMA application_id"));
    if (application != applicationId && application != backupApplicationId)
        return failure(ErrorCode::DatabaseTrouble, "is a database of another program",
                       source.path());
    LOOPWRIGHT_ASSIGN(const auto faults, source.schemaFaults());
    if (!faults.isEmpty())
        return failure(ErrorCode::DatabaseTrouble,
                       "was changed by another program (" + faults.front() + ")", source.path());
    return {};
}

/// An unfinished file that goes away unless it was put in its place.
class Unfinished
{
public:
    explicit Unfinished(const QString &place)
        : m_path(beginUnfinished(place))
    {
    }
    ~Unfinished()
    {
        removeDatabaseFiles(m_path);
        const QFileInfo info(m_path);
        for (const QString &copy :
             info.dir().entryList({info.fileName() + ".before-*"}, QDir::Files))
            QFile::remove(info.dir().filePath(copy));
    }
    Unfinished(const Unfinished &) = delete;
    Unfinished &operator=(const Unfinished &) = delete;
    QString path() const { return m_path; }

private:
    QString m_path;
};

QString freeName(const QString &wanted)
{
    QString name = wanted;
    for (int i = 2; QFileInfo::exists(name); ++i)
        name = QString("%1-%2").arg(wanted).arg(i);
    return name;
}

/// Takes the present database for itself, with its journal written into it. Nothing if it cannot
/// be read as a database: then nobody works with it.
Result<std::unique_ptr<SqliteConnection>> takePresent(const QString &path)
{
    if (QFileInfo(path).size() == 0) // SQLite would remove the log of what it was before
        return std::unique_ptr<SqliteConnection>();
    auto present = SqliteConnection::open(path, SqliteConnection::Mode::ReadWrite);
    if (!present || !(*present)->number("SELECT count(*) FROM sqlite_master"))
        return std::unique_ptr<SqliteConnection>();
    // Only the last connection may leave the write-ahead log.
    const auto mode = (*present)->text("PRAGMA journal_mode = DELETE");
    if (!mode || *mode != "delete" || !(*present)->run("BEGIN EXCLUSIVE", "restore"))
        return failure(ErrorCode::DatabaseTrouble,
                       "the database is open in a program; close it before restoring", path);
    return present;
}

/// Gives the present file a second name; the first is then replaced in one step. If the file
/// system has no second names it is renamed.
Result<QString> keepPresent(const QString &path)
{
    const QString kept = freeName(path + ".before-restore");
    const QByteArray from = QFile::encodeName(path);
    const QByteArray to = QFile::encodeName(kept);
    // Journal files are there only if the present database could not be opened.
    for (const char *ending : {"-wal", "-journal"})
        if (QFileInfo::exists(path + ending) && !QFile::rename(path + ending, kept + ending))
            return failure(ErrorCode::DiskTrouble, "the present database cannot be kept", path);
    if (::link(from.constData(), to.constData()) != 0 && !QFile::rename(path, kept))
        return failure(ErrorCode::DiskTrouble, "the present database cannot be kept", path);
    QFile::remove(path + "-shm");
    closeToOthers(kept);
    return kept;
}

} // namespace

bool isBackup(const QString &path)
{
    constexpr int markAt = 68; // of the header of an SQLite file: application_id, big-endian
    if (!QFileInfo(path).isFile())
        return false;
    const auto start = firstBytes(path, markAt + 4);
    return start && start->size() == markAt + 4 && start->startsWith("SQLite format 3") &&
           qFromBigEndian<quint32>(start->constData() + markAt) == backupApplicationId;
}

Result<void> backUp(const Database &database, const QString &path, const CopyProgress &progress)
{
    if (!database.isFile())
        return failure(ErrorCode::Usage,
                       "a server keeps these records: pg_dump backs them up there, and pg_restore "
                       "brings them back",
                       database.path());
    const QFileInfo info(path);
    if (!info.absoluteDir().exists())
        return failure(ErrorCode::DiskTrouble, "the folder does not exist", path);
    if (info.exists() && info == QFileInfo(database.path()))
        return failure(ErrorCode::Usage, "is the database itself", path);
    LOOPWRIGHT_TRY(checkReplaced(path));
    if (!QFileInfo(info.absolutePath()).isWritable())
        return failure(ErrorCode::DiskTrouble,
                       "the folder cannot be written, and no backup was made; name another place",
                       path);
    const Unfinished unfinished(path);
    const auto ofBackup = [&](Error error) {
        if (error.place == unfinished.path()) {
            error.place = path;
            if (error.code == ErrorCode::DatabaseTrouble) // not that of the records
                error = {ErrorCode::DiskTrouble,
                         "the backup cannot be written there: " + error.message, path};
        }
        return failure(error);
    };
    // It is read through while the disk takes it, which is a third of the time of the copy alone.
    auto onDisk = copyAndGoOn(database.file(), unfinished.path(), backupApplicationId, progress);
    if (!onDisk)
        return ofBackup(onDisk.error());
    LOOPWRIGHT_TRY(openCopy(unfinished.path(), path, Database::Access::ReadOnly));
    if (const auto done = onDisk->finish(); !done)
        return ofBackup(done.error());
    return putInPlace(unfinished.path(), path, PutMode::Replace);
}

Result<QString> restore(const QString &backupPath, const QString &databasePath, const Event &event,
                        const CopyProgress &progress)
{
    if (isServerAddress(databasePath))
        return failure(ErrorCode::Usage,
                       "a server keeps these records: pg_restore brings back there what pg_dump "
                       "backed up",
                       shownPlace(databasePath));
    if (!QFileInfo::exists(backupPath))
        return failure(ErrorCode::BadInput, "there is no such file", backupPath);
    if (QFileInfo(backupPath) == QFileInfo(databasePath))
        return failure(ErrorCode::Usage, "is the database itself", backupPath);
    if (!makePrivateFolder(QFileInfo(databasePath).absolutePath()))
        return failure(ErrorCode::DiskTrouble, "the folder cannot be made", databasePath);
    const Unfinished unfinished(databasePath);
    LOOPWRIGHT_ASSIGN(const auto source,
                      SqliteConnection::open(backupPath, SqliteConnection::Mode::ReadOnly));
    LOOPWRIGHT_TRY(refuseEmpty(*source));
    LOOPWRIGHT_TRY(refuseForeign(*source));
    LOOPWRIGHT_TRY(copyDatabase(*source, unfinished.path(), applicationId, progress));
    {
        LOOPWRIGHT_ASSIGN(auto copy,
                          openCopy(unfinished.path(), backupPath, Database::Access::ReadWrite));
        LOOPWRIGHT_TRY(startStation(copy, event));
        LOOPWRIGHT_TRY(intoOneFile(copy.file()));
    }
    if (!QFileInfo::exists(databasePath)) {
        LOOPWRIGHT_TRY(putInPlace(unfinished.path(), databasePath, PutMode::Replace));
        return QString();
    }
    LOOPWRIGHT_TRY(takePresent(databasePath));
    const auto kept = keepPresent(databasePath);
    if (!kept)
        return kept;
    LOOPWRIGHT_TRY(putInPlace(unfinished.path(), databasePath, PutMode::Replace));
    return kept;
}

} // namespace loopwright
