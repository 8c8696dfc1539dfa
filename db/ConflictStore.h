#pragma once
// What stations say otherwise of an order, and how somebody settled it. Only ever added; what no
// longer holds is withdrawn.

#include "core/acceptance/StationConflict.h"
#include "db/Transaction.h"

namespace loopwright {

class ConflictStore
{
public:
    explicit ConflictStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::vector<StationConflict>> ofOrder(const QString &order) const; ///< oldest first
    Result<std::vector<StationConflict>> all() const;
    /// Numbers of those that have one that stands, settled or not.
    Result<QStringList> otherOrdersAtPremises(const ServiceOrder &order) const;
    Result<std::optional<StationConflict>> find(const QString &id) const;

    /// One of this id that is there stands again.
    static Result<void> add(Transaction &transaction, const StationConflict &conflict);
    static Result<void> withdraw(Transaction &transaction, const QString &id);
    static Result<void> settle(Transaction &transaction, const QString &id,
                               const Settlement &settlement);

private:
    const Database &m_database;
};

} // namespace loopwright
