#include "db/HazardStore.h"

#include "core/order/Claims.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

Result<QStringList> orderNumbers(Statement &statement)
{
    const auto numbers =
        rows(statement, [](const Statement &row) { return row.text("order_number"); });
    if (!numbers)
        return failure(numbers.error());
    return QStringList(numbers->begin(), numbers->end());
}

} // namespace

Result<QStringList> HazardStore::orders() const
{
    Statement statement(m_database, "hazard.orders");
    return orderNumbers(statement);
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
        LOOPWRIGHT_ASSIGN(const auto found, orderNumbers(statement));
        numbers << found;
    }
    numbers.removeDuplicates();
    return numbers;
}

Result<QStringList> HazardStore::pairsOf(const QString &order) const
{
    Statement statement(m_database, "hazard.pairs");
    statement.bind("order_number", order);
    const auto pairs = rows(statement, [](const Statement &row) { return row.text("pair"); });
    if (!pairs)
        return failure(pairs.error());
    return QStringList(pairs->begin(), pairs->end());
}

Result<QStringList> HazardStore::ordersAtPremises(const ServiceOrder &order) const
{
    Statement statement(m_database, "hazard.at_premises");
    statement.bind("premises_key", premisesKey(order.premises)).bind("order_number", order.number);
    return orderNumbers(statement);
}

Result<QStringList> HazardStore::openOrdersConcerned(const ServiceOrder &order) const
{
    Statement statement(m_database, "hazard.open_orders_concerned");
    statement.bind("premises_key", premisesKey(order.premises))
        .bind("pair", pairIdentity(order.pair))
        .bind("office", order.office)
        .bind("order_number", order.number);
    return orderNumbers(statement);
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
