#pragma once
// The right to change rows. It is taken by Transaction::begin, given up when it
// goes out of scope, and what was changed under it is rolled back unless a Transaction committed it
// together with its event.

#include "db/Database.h"

namespace loopwright {

class WriteLock
{
public:
    ~WriteLock();
    WriteLock(WriteLock &&other) noexcept;
    WriteLock &operator=(WriteLock &&other) = delete;

    const Database &database() const { return *m_database; }
    Connection &connection() const { return m_database->connection(); }

protected:
    /// DatabaseTrouble if the database is read-only, or another program holds the lock longer
    /// than the busy timeout.
    static Result<WriteLock> take(Database &database);
    bool isOpen() const { return m_open; }
    /// Makes what was changed lasting, and ends.
    Result<void> keep();

private:
    explicit WriteLock(Database &database);

    Database *m_database; ///< null when moved from
    bool m_open = true;
};

} // namespace loopwright
