#pragma once
// Limit sets: added, never edited; the newest that is valid on a day is in force.

#include "core/base/LimitSet.h"
#include "db/Transaction.h"

namespace loopwright {

/// A set that was read, and the stored content it was read from.
struct ReadLimitSet
{
    QByteArray content;
    LimitSet set;
};

class LimitSetStore
{
public:
    explicit LimitSetStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<LimitSet>> find(const QString &version) const;
    /// The set with the latest first day that is not after `day`; of two with the same day the one
    /// that was added later.
    Result<std::optional<LimitSet>> inForceOn(QDate day) const;
    /// The same for a caller with many orders: `last` is what the previous call read, and is
    /// read again only if the records hold another content now.
    Result<std::optional<LimitSet>> inForceOn(QDate day, ReadLimitSet &last) const;
    Result<std::vector<LimitSet>> all() const; ///< by first day

    /// True if it was added; false if it is there already. BadInput if the version is
    /// there with other limits.
    static Result<bool> add(Transaction &transaction, const LimitSet &set);

private:
    const Database &m_database;
};

} // namespace loopwright
