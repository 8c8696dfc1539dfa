#include "db/ConflictStore.h"

#include "core/order/Claims.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

StationConflict readConflict(const Statement &row)
{
    StationConflict conflict{row.text("conflict"),
                             row.text("order_number"),
                             row.word<ConflictCode>("code"),
                             row.text("station"),
                             row.json("content"),
                             row.moment("at"),
                             {},
                             row.boolean("stands")};
    if (!row.isNull("side"))
        conflict.settled = Settlement{row.text("side"), row.text("because"), row.text("actor"),
                                      row.moment("settled"), row.moment("first")};
    return conflict;
}

} // namespace

Result<std::vector<StationConflict>> ConflictStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "conflict.of_order");
    statement.bind("order_number", order);
    return rows(statement, readConflict);
}

Result<std::vector<StationConflict>> ConflictStore::all() const
{
    Statement statement(m_database, "conflict.all");
    return rows(statement, readConflict);
}

Result<QStringList> ConflictStore::otherOrdersAtPremises(const ServiceOrder &order) const
{
    Statement statement(m_database, "conflict.other_orders_at_premises");
    statement.bind("premises_key", premisesKey(order.premises)).bind("order_number", order.number);
    return texts(statement, "order_number");
}

Result<std::optional<StationConflict>> ConflictStore::find(const QString &id) const
{
    Statement statement(m_database, "conflict.find");
    statement.bind("conflict", id);
    return firstRow(statement, readConflict);
}

Result<void> ConflictStore::add(Transaction &transaction, const StationConflict &conflict)
{
    Statement add(transaction, "conflict.add");
    add.bind("conflict", conflict.id)
        .bind("order_number", conflict.order)
        .bind("code", conflict.code)
        .bind("station", conflict.station)
        .bindJson("content", conflict.content)
        .bindMoment("at", conflict.since);
    LOOPWRIGHT_TRY(add.write());
    return {};
}

Result<void> ConflictStore::withdraw(Transaction &transaction, const QString &id)
{
    Statement withdraw(transaction, "conflict.withdraw");
    withdraw.bind("conflict", id);
    LOOPWRIGHT_TRY(withdraw.write());
    return {};
}

Result<void> ConflictStore::settle(Transaction &transaction, const QString &id,
                                   const Settlement &settlement)
{
    Statement settle(transaction, "conflict.settle");
    settle.bind("conflict", id)
        .bind("side", settlement.side)
        .bind("because", settlement.because)
        .bind("by", settlement.by)
        .bindMoment("at", settlement.at);
    LOOPWRIGHT_TRY(settle.write());
    return {};
}

} // namespace loopwright
