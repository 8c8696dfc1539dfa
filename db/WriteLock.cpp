#include "db/WriteLock.h"

#include "db/SqliteConnection.h"

#include <sqlite3.h>
#include <utility>

namespace loopwright {

WriteLock::WriteLock(Database &database)
    : m_database(&database)
{
}

WriteLock::WriteLock(WriteLock &&other) noexcept
    : m_database(std::exchange(other.m_database, nullptr))
    , m_open(std::exchange(other.m_open, false))
{
}

WriteLock::~WriteLock()
{
    // SQLite itself may have rolled back already, when the disk was full.
    if (m_open && connection().inTransaction())
        (void)connection().run("ROLLBACK", "rollback");
}

Result<WriteLock> WriteLock::take(Database &database)
{
    if (database.access() == Database::Access::ReadOnly)
        return failure(ErrorCode::DatabaseTrouble, "the database is read-only here",
                       database.path());
    LOOPWRIGHT_TRY(database.connection().run("BEGIN IMMEDIATE", "begin"));
    return WriteLock(database);
}

Result<void> WriteLock::keep()
{
    const auto kept = connection().run("COMMIT", "commit");
    m_open = !kept;
    // It may stand whole in the write-ahead log, and only not be synced: then who opens the records
    // after this process finds it there.
    if (!kept && (sqlite3_errcode(connection().handle()) & 0xff) == SQLITE_IOERR)
        return failure(ErrorCode::DiskTrouble,
                       "the disk failed at the last step, and the change may have been kept or "
                       "not: look whether it is there before it is entered again",
                       m_database->path());
    return kept;
}

} // namespace loopwright
