#include "db/WriteLock.h"

#include "db/SqliteConnection.h"

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
    LOOPWRIGHT_TRY(connection().run("COMMIT", "commit"));
    m_open = false;
    return {};
}

} // namespace loopwright
