#pragma once
// What is said of the database itself.

#include "db/Transaction.h"

namespace loopwright {

class MetaStore
{
public:
    explicit MetaStore(const Database &database)
        : m_database(database)
    {
    }

    /// A UUID that was made with the database; a copy and a restored backup keep it.
    Result<QString> databaseId() const;
    /// The tag of this set of records: six letters and digits, drawn with the database. A restored
    /// backup draws a new one. It stands in the numbers that are given out.
    Result<QString> station() const;
    static Result<void> drawStation(Transaction &transaction);
    /// Version of the limit set that the board's open orders were last decided by; empty if it
    /// was none alone, nothing if none was decided yet.
    Result<std::optional<QString>> boardLimits() const;
    static Result<void> putBoardLimits(Transaction &transaction, const QString &version);

private:
    Result<QString> value(const QString &key) const;

    const Database &m_database;
};

} // namespace loopwright
