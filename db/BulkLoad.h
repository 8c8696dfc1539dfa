#pragma once
// A load into a database that holds next to nothing yet. With the log of WAL every page of it
// would be written twice, and pages that do not fit into memory several times; with a rollback
// journal, which holds what was there before and so next to nothing, they go to the file at once.
// If the load is broken off, or the program killed, the database is as it was.

#include "core/base/Result.h"

namespace loopwright {

class Database;

class BulkLoad
{
public:
    /// From now on, until it goes away, nobody else can read the database.
    explicit BulkLoad(Database &database);
    ~BulkLoad();
    BulkLoad(const BulkLoad &) = delete;
    BulkLoad &operator=(const BulkLoad &) = delete;

    /// DatabaseTrouble if another program has the database open.
    Result<void> result() const { return m_result; }

private:
    Database &m_database;
    Result<void> m_result;
};

} // namespace loopwright
