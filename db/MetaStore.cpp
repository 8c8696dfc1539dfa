#include "db/MetaStore.h"

#include "db/Statement.h"

namespace loopwright {

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

} // namespace loopwright
