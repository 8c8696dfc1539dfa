#include "db/HazardStore.h"

#include "core/order/Claims.h"
#include "db/Statement.h"

namespace loopwright {

Result<QStringList> HazardStore::orders() const
{
    Statement statement(m_database, "hazard.orders");
    return texts(statement, "order_number");
}

Result<QStringList> HazardStore::ordersOnPairs(const ServiceOrder &order,
                                               const QStringList &pairs) const
{
    QStringList numbers;
    for (const QString &pair : pairs) {
        Statement statement(m_database, "hazard.on_pair");
        statement.bind("pair", pair)
            .bind("office", order.office)
            .bind("order_number", order.number);
        LOOPWRIGHT_ASSIGN(const auto found, texts(statement, "order_number"));
        numbers << found;
    }
    numbers.removeDuplicates();
    return numbers;
}

Result<QStringList> HazardStore::pairsOf(const QString &order) const
{
    Statement statement(m_database, "hazard.pairs");
    statement.bind("order_number", order);
    return texts(statement, "pair");
}

Result<QStringList> HazardStore::ordersAtPremises(const ServiceOrder &order) const
{
    Statement statement(m_database, "hazard.at_premises");
    statement.bind("premises_key", premisesKey(order.premises)).bind("order_number", order.number);
    return texts(statement, "order_number");
}

Result<QStringList> HazardStore::openOrdersConcerned(const ServiceOrder &order) const
{
    Statement statement(m_database, "hazard.open_orders_concerned");
    statement.bind("premises_key", premisesKey(order.premises))
        .bind("pair", pairIdentity(order.pair))
        .bind("office", order.office)
        .bind("order_number", order.number);
    return texts(statement, "order_number");
}

Result<void> HazardStore::note(Transaction &transaction, const ServiceOrder &order,
                               const QStringList &pairs)
{
    for (const QString &pair : pairs) {
        Statement statement(transaction, "hazard.note");
        statement.bind("pair", pair)
            .bind("office", order.office)
            .bind("order_number", order.number);
        LOOPWRIGHT_TRY(statement.run());
    }
    return {};
}

} // namespace loopwright
