#include "db/AssignmentStore.h"

#include "db/OrderStore.h"
#include "db/Statement.h"

#include <algorithm>

namespace loopwright {

namespace {

Assignment readAssignment(const Statement &row)
{
    return {row.word<ClaimKind>("kind"), row.text("scope"),
            row.text("value"),           row.word<AssignmentState>("state"),
            row.text("circuit_number"),  row.text("order_number")};
}

Result<void> change(Transaction &transaction, std::string_view label, const QString &order)
{
    Statement statement(transaction, label);
    LOOPWRIGHT_TRY(statement.bind("order_number", order).write());
    return {};
}

template<class Value>
Statement &bindValue(Statement &statement, const Value &value, const QString &order)
{
    return statement.bind("kind", value.kind)
        .bind("scope", value.scope)
        .bind("value", value.value)
        .bind("order_number", order);
}

bool same(const Assignment &assignment, const Claim &claim)
{
    return assignment.kind == claim.kind && assignment.scope == claim.scope &&
           assignment.value == claim.value;
}

/// Whether a row is what the order claims for its circuit; an order may have been moved to another.
bool serves(const Assignment &assignment, const Claim &claim, const ServiceOrder &order)
{
    return assignment.state != AssignmentState::Released && assignment.circuit == order.circuit &&
           same(assignment, claim);
}

/// One row of a use: a value with one of the circuits and orders.
struct Use
{
    ValueUse value; ///< without circuits and orders
    QString circuit, order;
};

Use readUse(const Statement &row)
{
    return {{row.word<ClaimKind>("kind"), row.text("scope"), row.text("value"), {}, {}},
            row.text("circuit_number"),
            row.text("order_number")};
}

void addOnce(QStringList &list, const QString &text)
{
    if (!list.contains(text))
        list << text;
}

} // namespace

Result<std::optional<Assignment>> AssignmentStore::holderOf(ClaimKind kind, const QString &scope,
                                                            const QString &value,
                                                            const QString &except) const
{
    Statement statement(m_database, "assignment.holder");
    statement.bind("kind", kind)
        .bind("scope", scope)
        .bind("value", value)
        .bind("except_order", except);
    return firstRow(statement, [&](const Statement &row) {
        return Assignment{kind,
                          scope,
                          value,
                          row.word<AssignmentState>("state"),
                          row.text("circuit_number"),
                          row.text("order_number")};
    });
}

Result<std::vector<Conflict>> AssignmentStore::conflictsOf(const ServiceOrder &order) const
{
    std::vector<Conflict> conflicts;
    for (const Claim &claim : claimsOf(order)) {
        LOOPWRIGHT_ASSIGN(const auto holder,
                          holderOf(claim.kind, claim.scope, claim.value, order.number));
        if (holder && holder->circuit != order.circuit)
            conflicts.push_back({claim.field, claim.kind, claim.shown, holder->circuit});
    }
    return conflicts;
}

Result<std::vector<Assignment>> AssignmentStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "assignment.of_order");
    statement.bind("order_number", order);
    return rows(statement, readAssignment);
}

Result<std::vector<Assignment>> AssignmentStore::ofCircuit(const QString &circuit) const
{
    Statement statement(m_database, "assignment.of_circuit");
    statement.bind("circuit_number", circuit);
    return rows(statement, readAssignment);
}

Result<std::vector<PairUse>> AssignmentStore::ofCable(const QString &office,
                                                      const QString &cable) const
{
    Statement statement(m_database, "assignment.of_cable");
    statement.bind("office", office)
        .bind("from", cable + '-')
        .bind("before", cable + '.'); // the sign after the dash
    return rows(statement, [](const Statement &row) {
        return PairUse{row.text("value"),
                       row.word<AssignmentState>("state"),
                       row.text("order_number"),
                       row.text("circuit_number"),
                       row.text("pair"),
                       row.word<OrderStatus>("status"),
                       row.word<OrderOutcome>("outcome"),
                       row.text("criterion"),
                       row.text("reason"),
                       row.boolean("hazard")};
    });
}

Result<std::vector<ValueUse>> AssignmentStore::doubles() const
{
    return uses("assignment.doubles");
}

Result<std::vector<ValueUse>> AssignmentStore::unassigned() const
{
    return uses("assignment.unassigned");
}

Result<std::vector<ValueUse>> AssignmentStore::unwanted() const
{
    return uses("assignment.unwanted");
}

Result<std::vector<ValueUse>> AssignmentStore::uses(const char *label) const
{
    Statement statement(m_database, label);
    LOOPWRIGHT_ASSIGN(const auto read, rows(statement, readUse));
    std::vector<ValueUse> found;
    for (const Use &use : read) {
        const ValueUse &value = use.value;
        if (found.empty() || found.back().kind != value.kind || found.back().scope != value.scope ||
            found.back().value != value.value)
            found.push_back(value);
        addOnce(found.back().circuits, use.circuit);
        addOnce(found.back().orders, use.order);
    }
    return found;
}

Result<std::vector<Conflict>> AssignmentStore::claim(Transaction &transaction,
                                                     const ServiceOrder &order)
{
    const AssignmentStore store(transaction.database());
    auto conflicts = store.conflictsOf(order);
    if (!conflicts)
        return conflicts;
    LOOPWRIGHT_TRY(OrderStore(transaction.database()).subjectOf(order.number));
    LOOPWRIGHT_ASSIGN(const auto before, store.ofOrder(order.number));
    const std::vector<Claim> claims = conflicts->empty() ? claimsOf(order) : std::vector<Claim>();
    Statement release(transaction, "assignment.release_value");
    for (const Assignment &assignment : before)
        if (assignment.state == AssignmentState::Planned &&
            std::none_of(claims.begin(), claims.end(),
                         [&](const Claim &claim) { return serves(assignment, claim, order); }))
            LOOPWRIGHT_TRY(bindValue(release, assignment, order.number).write());
    Statement plan(transaction, "assignment.plan");
    for (const Claim &claim : claims)
        if (std::none_of(before.begin(), before.end(), [&](const Assignment &assignment) {
                return serves(assignment, claim, order);
            }))
            LOOPWRIGHT_TRY(bindValue(plan, claim, order.number).write());
    return conflicts;
}

Result<QHash<QString, QString>> AssignmentStore::heldBetween(ClaimKind kind, const QString &scope,
                                                             const QString &from,
                                                             const QString &before) const
{
    Statement statement(m_database, "assignment.held_between");
    statement.bind("kind", kind).bind("scope", scope).bind("from", from).bind("before", before);
    QHash<QString, QString> holders;
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return holders;
        holders.insert(statement.text("value"), statement.text("circuit_number"));
    }
}

namespace {

/// What of the claims the rows do not serve.
std::vector<Claim> notServed(const std::vector<Claim> &claims, const std::vector<Assignment> &rows,
                             const ServiceOrder &order)
{
    std::vector<Claim> missing;
    for (const Claim &claim : claims)
        if (std::ranges::none_of(rows,
                                 [&](const Assignment &row) { return serves(row, claim, order); }))
            missing.push_back(claim);
    return missing;
}

/// What is held and claimed no longer.
std::vector<Assignment> notClaimed(const std::vector<Claim> &claims,
                                   const std::vector<Assignment> &rows, const ServiceOrder &order)
{
    std::vector<Assignment> held;
    for (const Assignment &row : rows)
        if (row.state != AssignmentState::Released &&
            std::ranges::none_of(claims,
                                 [&](const Claim &claim) { return serves(row, claim, order); }))
            held.push_back(row);
    return held;
}

Result<void> putBack(Transaction &transaction, const Claim &claim, const ServiceOrder &order,
                     AssignmentState state)
{
    Statement last(transaction, "assignment.last_released");
    bindValue(last, claim, order.number);
    LOOPWRIGHT_ASSIGN(const auto found, firstRow(last, [](const Statement &row) {
                          return row.optionalInteger("id");
                      }));
    const std::optional<qint64> id = found.value_or(std::nullopt);
    if (id) {
        Statement remove(transaction, "assignment.remove");
        LOOPWRIGHT_TRY(remove.bind("id", *id).write());
    }
    Statement put(transaction, "assignment.put_back");
    bindValue(put, claim, order.number).bind("id", id).bind("state", state);
    LOOPWRIGHT_TRY(put.write());
    return {};
}

} // namespace

Result<void> AssignmentStore::exchange(Transaction &transaction, const ServiceOrder &order,
                                       AssignmentState state)
{
    LOOPWRIGHT_ASSIGN(const auto rows,
                      AssignmentStore(transaction.database()).ofOrder(order.number));
    const std::vector<Claim> claims = claimsOf(order);
    Statement release(transaction, "assignment.release_held");
    for (const Assignment &row : notClaimed(claims, rows, order))
        LOOPWRIGHT_TRY(bindValue(release, row, order.number).write());
    Statement hold(transaction, "assignment.hold");
    for (const Claim &claim : notServed(claims, rows, order))
        LOOPWRIGHT_TRY(bindValue(hold, claim, order.number).bind("state", state).write());
    return {};
}

Result<void> AssignmentStore::takeBack(Transaction &transaction, const ServiceOrder &order,
                                       bool held, AssignmentState state)
{
    LOOPWRIGHT_ASSIGN(const auto rows,
                      AssignmentStore(transaction.database()).ofOrder(order.number));
    const std::vector<Claim> claims = held ? std::vector<Claim>() : claimsOf(order);
    Statement forget(transaction, "assignment.forget");
    for (const Assignment &row : notClaimed(claims, rows, order))
        LOOPWRIGHT_TRY(bindValue(forget, row, order.number).write());
    for (const Claim &claim : notServed(claims, rows, order))
        LOOPWRIGHT_TRY(putBack(transaction, claim, order, state));
    return {};
}

Result<void> AssignmentStore::startWorking(Transaction &transaction, const QString &order)
{
    LOOPWRIGHT_TRY(change(transaction, "assignment.release_working", order));
    return change(transaction, "assignment.start_working", order);
}

Result<void> AssignmentStore::releasePlanned(Transaction &transaction, const QString &order)
{
    return change(transaction, "assignment.release_planned", order);
}

} // namespace loopwright
