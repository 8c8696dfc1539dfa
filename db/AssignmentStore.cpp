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
    LOOPWRIGHT_TRY(statement.bind("order_number", order).run());
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
            LOOPWRIGHT_TRY(bindValue(release, assignment, order.number).run());
    Statement plan(transaction, "assignment.plan");
    for (const Claim &claim : claims)
        if (std::none_of(before.begin(), before.end(), [&](const Assignment &assignment) {
                return serves(assignment, claim, order);
            }))
            LOOPWRIGHT_TRY(bindValue(plan, claim, order.number).run());
    return conflicts;
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
