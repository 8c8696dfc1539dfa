#pragma once
// Which orders read a hazard, or say how one was closed, by the pair and the premises that others
// work at too. Derived from the facts by whatever decides an order anew; never taken away, since
// whether the hazard is closed is for the decision to say.

#include "core/order/ServiceOrder.h"
#include "db/Transaction.h"

namespace loopwright {

class HazardStore
{
public:
    explicit HazardStore(const Database &database)
        : m_database(database)
    {
    }

    /// Every order that holds a hazard.
    Result<QStringList> orders() const;
    /// Other orders of the office that hold a hazard of one of these pairs (pairIdentity()).
    Result<QStringList> ordersOnPairs(const ServiceOrder &order, const QStringList &pairs) const;
    /// The pairs of which the order holds a hazard.
    Result<QStringList> pairsOf(const QString &order) const;
    /// Other orders at the premises that hold a hazard.
    Result<QStringList> ordersAtPremises(const ServiceOrder &order) const;
    /// Other open orders on the pair, and at the premises of any order that holds a hazard of the
    /// pair: those whom a hazard of this one concerns.
    Result<QStringList> openOrdersConcerned(const ServiceOrder &order) const;

    /// Notes that the order holds a hazard of these pairs.
    static Result<void> note(Transaction &transaction, const ServiceOrder &order,
                             const QStringList &pairs);

private:
    const Database &m_database;
};

} // namespace loopwright
