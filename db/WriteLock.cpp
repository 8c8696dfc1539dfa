#include "db/WriteLock.h"

#include "db/Connection.h"

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
    if (m_open)
        connection().rollBack();
}

Result<WriteLock> WriteLock::take(Database &database)
{
    if (database.access() == Database::Access::ReadOnly)
        return failure(ErrorCode::DatabaseTrouble, "the database is read-only here",
                       database.path());
    LOOPWRIGHT_TRY(database.connection().beginChange());
    return WriteLock(database);
}

Result<void> WriteLock::keep()
{
    const auto kept = connection().commit();
    m_open = !kept;
    return kept;
}

} // namespace loopwright
