#pragma once
// Evidence: facts as they were recorded, voids and exceptions among them. Only ever added.

#include "core/acceptance/Fact.h"
#include "db/Transaction.h"

namespace loopwright {

class FactStore
{
public:
    explicit FactStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<Fact>> find(const QString &id) const;
    /// The fact that voids this one; nothing where none does.
    Result<std::optional<Fact>> voidOf(const QString &id) const;
    /// All of an order, oldest first, voided ones and the voids too.
    Result<std::vector<Fact>> ofOrder(const QString &order) const;
    /// All of every order at the same premises from `from` to before `before`, oldest first: what
    /// was done on a visit.
    Result<std::vector<Fact>> atPremises(const QString &premises, const Moment &from,
                                         const Moment &before) const;

    /// Numbers of the open orders with a fact that names the instrument.
    Result<QStringList> openOrdersUsing(const QString &instrument) const;

    /// True where it was added; false where a fact of this id with this content is there already.
    /// BadInput where the id is another fact's, NotFound where there is no such order.
    static Result<bool> add(Transaction &transaction, const Fact &fact);

private:
    const Database &m_database;
};

} // namespace loopwright
