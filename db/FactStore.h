#pragma once
// Evidence: facts as they were recorded, voids and exceptions among them. Only ever added.

#include "core/acceptance/Fact.h"
#include "core/order/Services.h"
#include "db/Transaction.h"

#include <functional>

namespace loopwright {

class FactStore
{
public:
    explicit FactStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<QString>> digestOf(const QString &id) const; ///< nothing: not there
    Result<std::optional<Fact>> find(const QString &id) const;
    /// The fact that voids this one; nothing if none does.
    Result<std::optional<Fact>> voidOf(const QString &id) const;
    /// All of an order, oldest first, voided ones and the voids too.
    Result<std::vector<Fact>> ofOrder(const QString &order) const;
    /// Days from the first to the last, in the premises' own time; a day more on either side is
    /// read, since offsets differ and a leaving may be recorded late.
    struct Span
    {
        QDate first, last;
    };
    /// What the installer said of visits and self-tests at the premises in other orders than this
    /// one, oldest first, without what was voided.
    Result<std::vector<Fact>> visitsAtPremises(const ServiceOrder &order, const QString &installer,
                                               const Span &days) const;
    /// What anybody said of visits there in other orders.
    Result<std::vector<Fact>> visitsAtPremises(const ServiceOrder &order, const Span &days) const;
    /// What the installer said of visits and self-tests in any order, oldest first, without what
    /// was voided.
    Result<std::vector<Fact>> visitsOf(const QString &installer, const Span &days) const;
    /// Numbers of the other orders at the premises that have facts of those days.
    Result<QStringList> otherOrdersAtPremises(const ServiceOrder &order, const Span &days) const;

    /// Numbers of the open orders with a fact that names the instrument.
    Result<QStringList> openOrdersUsing(const QString &instrument) const;

    struct StoredMakeup
    {
        QString circuit, order, pair;
        LineKind kind = LineKind::Bri;
        QByteArray content; ///< the whole fact
    };
    /// The newest make-up of each order that holds a pair of the office, by pair; what was voided,
    /// or measured on another pair, is left out.
    Result<void> eachMakeup(const QString &office,
                            const std::function<Result<void>(const StoredMakeup &)> &visit) const;
    /// How many pairs the office's orders hold, with a make-up or without.
    Result<qint64> countPairs(const QString &office) const;

    /// True if it was added; false if a fact of this id with this content is there already.
    /// BadInput if the id is another fact's, NotFound if there is no such order.
    static Result<bool> add(Transaction &transaction, const Fact &fact);

private:
    const Database &m_database;
};

} // namespace loopwright
