#include "db/TableDump.h"

#include "db/SqliteConnection.h"
#include "db/Statement.h"

#include <sqlite3.h>

namespace loopwright {

bool isUnpublished(const QString &table)
{
    return table == u"office_test_line";
}

Result<QStringList> TableDump::tables() const
{
    Statement statement(m_database, "table.names");
    const auto names = rows(statement, [](const Statement &row) { return row.text("name"); });
    if (!names)
        return failure(names.error());
    return QStringList(names->begin(), names->end());
}

Result<void> TableDump::dump(const QString &table,
                             const std::function<Result<void>(const QStringList &)> &row) const
{
    const auto known = tables();
    if (!known)
        return failure(known.error());
    if (!known->contains(table))
        return failure(ErrorCode::NotFound, "there is no table " + table);
    // A table's name cannot be bound; this one comes from the schema.
    SqliteConnection &connection = m_database.connection();
    const auto statement =
        connection.lend("", QString("SELECT * FROM \"%1\"").arg(table).toStdString());
    if (!statement)
        return failure(statement.error());
    sqlite3_stmt *handle = (*statement)->handle;
    QStringList texts;
    for (const std::string &column : (*statement)->columns)
        texts << QString::fromStdString(column);
    LOOPWRIGHT_TRY(row(texts));
    int code = sqlite3_step(handle);
    for (; code == SQLITE_ROW; code = sqlite3_step(handle)) {
        for (int i = 0; i < texts.size(); ++i)
            texts[i] =
                QString::fromUtf8(reinterpret_cast<const char *>(sqlite3_column_text(handle, i)),
                                  sqlite3_column_bytes(handle, i));
        LOOPWRIGHT_TRY(row(texts));
    }
    if (code != SQLITE_DONE)
        return failure(connection.lastError(table));
    return {};
}

Result<bool> TableDump::isEmpty() const
{
    Statement statement(m_database, "table.counts");
    const auto counted =
        firstRow(statement, [](const Statement &row) { return row.integer("rows"); });
    if (!counted)
        return failure(counted.error());
    return counted->value_or(0) == 0;
}

} // namespace loopwright
