#pragma once
// Which orders read a hazard, or say how one was closed, by the pair and the premises that others
// work at too. Derived from the facts by whatever decides an order anew; never taken away, since
// whether the hazard is closed is for the decision to say. In a van they are also those of which
// the office told: it may not have these orders.

#include "core/acceptance/HazardCards.h"
#include "core/order/ServiceOrder.h"
#include "db/Transaction.h"

namespace loopwright {

/// Where hazards concern others.
struct HazardPlace
{
    QString office, pair; ///< pairIdentity()
    QString premisesKey;
};

/// What an office tells of an order with hazards.
struct ToldHazard
{
    QString order, office, premisesKey;
    QStringList pairs; ///< pairIdentity(); an empty one where none is known
    qint64 events = 0; ///< of the circuit's chain when it was told
    HazardCards cards;

    QJsonObject toJson() const;
    static Result<ToldHazard> fromJson(const QJsonObject &object, const QString &place);
};

class HazardStore
{
public:
    explicit HazardStore(const Database &database)
        : m_database(database)
    {
    }

    /// Every order of these records that holds a hazard.
    Result<QStringList> orders() const;
    /// Other orders of the office that hold a hazard of one of these pairs (pairIdentity()).
    Result<QStringList> ordersOnPairs(const QString &order, const QString &office,
                                      const QStringList &pairs) const;
    /// The pairs of which the order holds a hazard.
    Result<QStringList> pairsOf(const QString &order) const;
    /// Other orders at the premises that hold a hazard.
    Result<QStringList> ordersAtPremises(const ServiceOrder &order) const;
    /// Other open orders on the pair, and at the premises of any order that holds a hazard of the
    /// pair: those whom a hazard of this one concerns.
    Result<QStringList> openOrdersConcerned(const QString &order, const HazardPlace &place) const;
    /// Orders of these records that hold a hazard of an office which is still open.
    Result<QStringList> openAtOffice(const QString &office) const;
    /// Orders that are not here, and of which an office told.
    Result<QStringList> toldElsewhere() const;
    /// What an office told of the order.
    Result<std::optional<ToldHazard>> told(const QString &order) const;
    /// The safety card of that id, if an office told of it.
    Result<std::optional<Fact>> toldCard(const QString &id) const;

    /// Notes that the order holds a hazard of these pairs.
    static Result<void> note(Transaction &transaction, const ServiceOrder &order,
                             const QStringList &pairs);
    /// What an office told. What is older than that which is known closes nothing, and takes no
    /// hazard away.
    static Result<void> tell(Transaction &transaction, const ToldHazard &given);

private:
    const Database &m_database;
};

} // namespace loopwright
