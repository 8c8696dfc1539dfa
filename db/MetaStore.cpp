#include "db/MetaStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

const QString boardLimitsKey = QStringLiteral("board_limits");

}

Result<QString> MetaStore::value(const QString &key) const
{
    Statement statement(m_database, "meta.value");
    statement.bind("key", key);
    const auto found = firstRow(statement, [](const Statement &row) { return row.text("value"); });
    if (!found)
        return failure(found.error());
    if (!*found)
        return failure(ErrorCode::DatabaseTrouble, "the database does not say its " + key,
                       m_database.path());
    return **found;
}

Result<QString> MetaStore::databaseId() const
{
    return value("database");
}

Result<QString> MetaStore::station() const
{
    return value("station");
}

Result<void> MetaStore::drawStation(Transaction &transaction)
{
    Statement draw(transaction, "meta.draw_station");
    const auto done = draw.run();
    return done ? Result<void>() : failure(done.error());
}

Result<std::optional<QString>> MetaStore::boardLimits() const
{
    Statement statement(m_database, "meta.value");
    statement.bind("key", boardLimitsKey);
    return firstRow(statement, [](const Statement &row) { return row.text("value"); });
}

Result<void> MetaStore::putBoardLimits(Transaction &transaction, const QString &version)
{
    Statement put(transaction, "meta.put");
    return put.bind("key", boardLimitsKey).bind("value", version).write();
}

} // namespace loopwright
