#include "db/SqliteCopy.h"

#include "db/LeftOvers.h"
#include "db/PrivateFiles.h"
#include "db/SqliteError.h"

#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>
#include <utility>

namespace loopwright {

namespace {

constexpr int pagesPerStep = 2048;
/// What SQLite puts behind the name of a database for what it keeps beside it.
constexpr const char *besideEndings[] = {"-wal", "-shm", "-journal"};

/// Waits until what was written under this name is on the disk. A folder, too, so that a rename
/// stays.
Result<void> waitForDisk(const QString &path)
{
    LOOPWRIGHT_ASSIGN(auto wait, DiskWait::begin(path));
    return wait.finish();
}

Result<void> copyPages(SqliteConnection &source, SqliteConnection &target,
                       const CopyProgress &progress)
{
    sqlite3_backup *backup = sqlite3_backup_init(target.handle(), "main", source.handle(), "main");
    if (!backup)
        return failure(target.lastError("copy"));
    bool wanted = true;
    int code = SQLITE_OK;
    while (wanted && code == SQLITE_OK) {
        code = sqlite3_backup_step(backup, pagesPerStep);
        const qint64 all = sqlite3_backup_pagecount(backup);
        if (progress)
            wanted = progress(all - sqlite3_backup_remaining(backup), all) || code == SQLITE_DONE;
    }
    sqlite3_backup_finish(backup);
    if (!wanted)
        return failure(ErrorCode::Refused, "was cancelled", target.path());
    if (code != SQLITE_DONE)
        return failure(
            sqliteError(code, QString::fromUtf8(sqlite3_errstr(code)), target.path(), "copy"));
    // The copy says of itself that it keeps a journal beside it, as its source does.
    LOOPWRIGHT_TRY(target.text("PRAGMA journal_mode = DELETE"));
    return {};
}

Result<DiskWait> copyInto(SqliteConnection &source, const QString &toPath, qint64 mark,
                          const CopyProgress &progress)
{
    const ReadSnapshot snapshot(source);
    LOOPWRIGHT_TRY(snapshot.result());
    LOOPWRIGHT_ASSIGN(const auto target,
                      SqliteConnection::open(toPath, SqliteConnection::Mode::ReadWrite));
    // The disk is waited for once, at the end.
    LOOPWRIGHT_TRY(target->run("PRAGMA synchronous = OFF", "copy"));
    LOOPWRIGHT_TRY(copyPages(source, *target, progress));
    LOOPWRIGHT_TRY(target->run("PRAGMA application_id = " + QByteArray::number(mark), "copy"));
    return DiskWait::begin(toPath);
}

} // namespace

DiskWait::DiskWait(const QString &path, int file)
    : m_path(path)
    , m_file(file)
    , m_problem(std::async(std::launch::async, [file] { return ::fsync(file) == 0 ? 0 : errno; }))
{
}

DiskWait::DiskWait(DiskWait &&other) noexcept
    : m_path(std::move(other.m_path))
    , m_file(std::exchange(other.m_file, -1))
    , m_problem(std::move(other.m_problem))
{
}

DiskWait::~DiskWait()
{
    if (m_problem.valid())
        m_problem.wait();
    if (m_file >= 0)
        ::close(m_file);
}

Result<DiskWait> DiskWait::begin(const QString &path)
{
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return failure(ErrorCode::DiskTrouble, QString::fromLocal8Bit(std::strerror(errno)), path);
    return DiskWait(path, file);
}

Result<void> DiskWait::finish()
{
    const int problem = m_problem.get();
    ::close(std::exchange(m_file, -1));
    // Some file systems cannot wait for a folder; their renames are as safe as they get.
    if (problem != 0 && problem != EINVAL)
        return failure(ErrorCode::DiskTrouble, QString::fromLocal8Bit(std::strerror(problem)),
                       m_path);
    return {};
}

Result<void> copyDatabase(SqliteConnection &source, const QString &toPath, qint64 mark,
                          const CopyProgress &progress)
{
    auto done = [&]() -> Result<void> {
        LOOPWRIGHT_ASSIGN(auto onDisk, copyAndGoOn(source, toPath, mark, progress));
        return onDisk.finish();
    }();
    if (!done)
        removeDatabaseFiles(toPath);
    return done;
}

Result<DiskWait> copyAndGoOn(SqliteConnection &source, const QString &toPath, qint64 mark,
                             const CopyProgress &progress)
{
    auto onDisk = copyInto(source, toPath, mark, progress);
    if (!onDisk)
        removeDatabaseFiles(toPath);
    return onDisk;
}

Result<void> putInPlace(const QString &finished, const QString &place, PutMode mode)
{
    const QByteArray from = QFile::encodeName(finished);
    const QByteArray to = QFile::encodeName(place);
    const unsigned flags = mode == PutMode::KeepOther ? RENAME_NOREPLACE : 0;
    int result = ::renameat2(AT_FDCWD, from.constData(), AT_FDCWD, to.constData(), flags);
    // A file system that does not know the flag: look first.
    if (result != 0 && errno == EINVAL && !QFileInfo::exists(place))
        result = std::rename(from.constData(), to.constData());
    if (result != 0 && mode == PutMode::KeepOther && QFileInfo::exists(place)) {
        removeDatabaseFiles(finished);
        return {};
    }
    if (result != 0)
        return failure(ErrorCode::DiskTrouble, QString::fromLocal8Bit(std::strerror(errno)), place);
    return waitForDisk(QFileInfo(place).absolutePath());
}

QString unfinishedName(const QString &path)
{
    const QString stem = path + ".unfinished-";
    removeLeftOvers(stem);
    return nameInTheMaking(stem);
}

QString beginUnfinished(const QString &path)
{
    const QString name = unfinishedName(path);
    makePrivateFile(name); // else SQLite says why it cannot
    return name;
}

std::optional<QString> databaseBeside(const QString &path)
{
    for (const char *ending : besideEndings)
        if (path.endsWith(QLatin1StringView(ending)))
            return path.chopped(qsizetype(std::strlen(ending)));
    return std::nullopt;
}

void removeDatabaseFiles(const QString &path)
{
    QFile::remove(path);
    for (const char *ending : besideEndings)
        QFile::remove(path + ending);
}

} // namespace loopwright
