#include "db/DraftStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

Result<QMap<QString, QJsonObject>> contentsBy(Statement &statement, const char *column)
{
    QMap<QString, QJsonObject> drafts;
    const auto read = rows(statement, [&](const Statement &row) {
        drafts.insert(row.text(column), row.json("content"));
        return true;
    });
    if (!read)
        return failure(read.error());
    return drafts;
}

} // namespace

Result<std::optional<QJsonObject>> DraftStore::find(const QString &order, const QString &part) const
{
    Statement statement(m_database, "draft.find");
    statement.bind("order_number", order).bind("part", part);
    return firstRow(statement, [](const Statement &row) { return row.json("content"); });
}

Result<QMap<QString, QJsonObject>> DraftStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "draft.of_order");
    statement.bind("order_number", order);
    return contentsBy(statement, "part");
}

Result<QMap<QString, QJsonObject>> DraftStore::ofPart(const QString &part) const
{
    Statement statement(m_database, "draft.of_part");
    statement.bind("part", part);
    return contentsBy(statement, "order_number");
}

Result<void> DraftStore::put(Transaction &transaction, const QString &order, const QString &part,
                             const QJsonObject &content)
{
    Statement statement(transaction, "draft.put");
    statement.bind("order_number", order).bind("part", part).bindJson("content", content);
    LOOPWRIGHT_ASSIGN(const auto changed, statement.run());
    transaction.countDraftChanges(changed);
    return {};
}

Result<void> DraftStore::remove(Transaction &transaction, const QString &order, const QString &part)
{
    Statement statement(transaction, "draft.remove");
    LOOPWRIGHT_ASSIGN(const auto changed,
                      statement.bind("order_number", order).bind("part", part).run());
    transaction.countDraftChanges(changed);
    return {};
}

} // namespace loopwright
