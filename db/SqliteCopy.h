#pragma once
// Copies a database page by page while it is in use (SQLite's backup interface), and puts finished
// files in their place so that a half-made one is never seen there.

#include "db/SqliteConnection.h"

#include <functional>
#include <future>
#include <optional>

namespace loopwright {

/// Called with how many of all pages are done; returns false to stop.
using CopyProgress = std::function<bool(qint64 done, qint64 all)>;

/// Copies the state at this moment into a new file, which is one file without a journal beside it
/// and is on the disk when this returns. Other programs may go on writing. Refused if the
/// progress said stop; on any failure the new file is gone. The copy bears `mark` as its
/// application_id.
Result<void> copyDatabase(SqliteConnection &source, const QString &toPath, qint64 mark,
                          const CopyProgress &progress = {});

/// Waits for the disk beside other work, by a thread of its own.
class DiskWait
{
public:
    /// Begins: for what was written to this file, or under this name of a folder.
    static Result<DiskWait> begin(const QString &path);
    ~DiskWait();
    DiskWait(DiskWait &&other) noexcept;
    DiskWait &operator=(DiskWait &&) = delete;

    /// Returns when all is on the disk. The file is let go then, not before: SQLite's locks on it
    /// in this process go with it.
    Result<void> finish();

private:
    DiskWait(const QString &path, int file);

    QString m_path;
    int m_file;
    std::future<int> m_problem;
};

/// As copyDatabase(), but the copy may be read before it is on the disk.
Result<DiskWait> copyAndGoOn(SqliteConnection &source, const QString &toPath, qint64 mark,
                             const CopyProgress &progress = {});

enum class PutMode
{
    Replace,  ///< takes the place of a file that is there
    KeepOther ///< leaves a file that is there, and removes the new one
};
/// Renames a finished file of the same folder into its place and waits for the disk.
Result<void> putInPlace(const QString &finished, const QString &place, PutMode mode);

/// A name beside `path` for what is being made, where nothing is yet; what killed processes left
/// under such a name is removed.
QString unfinishedName(const QString &path);
/// Likewise, with a private, empty file of that name, into which SQLite writes.
QString beginUnfinished(const QString &path);
/// The database beside which SQLite keeps a file of this name (its write-ahead log, the index of
/// it, its journal); nothing if the name is none of those. It is lost with them.
std::optional<QString> databaseBeside(const QString &path);
/// Removes a database file with the files that SQLite keeps beside it.
void removeDatabaseFiles(const QString &path);

} // namespace loopwright
