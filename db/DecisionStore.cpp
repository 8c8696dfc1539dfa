#include "db/DecisionStore.h"

#include "db/OrderStore.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

StoredDecision readDecision(const Statement &row)
{
    return {row.text("decision"), row.text("order_number"), row.moment("at"),
            row.bytes("input"),   row.text("input_digest"), row.bytes("result"),
            row.text("digest")};
}

} // namespace

Result<std::optional<StoredDecision>> DecisionStore::find(const QString &id) const
{
    Statement statement(m_database, "decision.find");
    statement.bind("decision", id);
    return firstRow(statement, readDecision);
}

Result<std::vector<StoredDecision>> DecisionStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "decision.of_order");
    statement.bind("order_number", order);
    return rows(statement, readDecision);
}

Result<std::optional<StoredDecision>> DecisionStore::newestOf(const QString &order) const
{
    Statement statement(m_database, "decision.newest");
    statement.bind("order_number", order);
    return firstRow(statement, readDecision);
}

Result<std::optional<QString>> DecisionStore::newestLimitSetOf(const QString &order) const
{
    Statement statement(m_database, "decision.newest_limit_set");
    statement.bind("order_number", order);
    return firstRow(statement, [](const Statement &row) { return row.text("limit_set"); });
}

Result<bool> DecisionStore::add(Transaction &transaction, const Decision &decision,
                                const DecisionInput &input, const Moment &at)
{
    return addStored(transaction,
                     {decision.id, toText(decision.outcome), decision.limitSet, at,
                      canonicalJson(input.toJson()), canonicalJson(decision.toJson())},
                     decision.order);
}

Result<bool> DecisionStore::addStored(Transaction &transaction, const BundledDecision &decision,
                                      const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto subject, OrderStore(transaction.database()).subjectOf(order));
    const Seal inputSeal{"decision_input", decision.id, sha256Hex(decision.input)};
    const Seal seal{"decision", decision.id, sha256Hex(decision.result)};
    LOOPWRIGHT_ASSIGN(const auto before, DecisionStore(transaction.database()).find(decision.id));
    if (before && (before->digest != seal.digest || before->inputDigest != inputSeal.digest))
        return failure(ErrorCode::BadInput, "is the id of another decision", decision.id);
    if (before)
        return false;
    Statement add(transaction, "decision.add");
    add.bind("decision", decision.id)
        .bind("order_number", order)
        .bind("outcome", decision.outcome)
        .bind("limit_set", decision.limitSet)
        .bindMoment("at", decision.at)
        .bindBytes("input", decision.input)
        .bind("input_digest", inputSeal.digest)
        .bindBytes("result", decision.result)
        .bind("digest", seal.digest);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(subject, inputSeal);
    transaction.seal(subject, seal);
    return true;
}

} // namespace loopwright
