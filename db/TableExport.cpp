#include "db/TableExport.h"

#include "db/Connection.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

constexpr const char *tables[] = {"meta",
                                  "office",
                                  "issuer",
                                  "office_test_line",
                                  "installer",
                                  "instrument",
                                  "calibration",
                                  "public_key",
                                  "circuit",
                                  "service_order",
                                  "order_terminal",
                                  "assignment",
                                  "fact",
                                  "limit_set",
                                  "decision",
                                  "certificate",
                                  "certificate_issue",
                                  "event",
                                  "chain_head",
                                  "order_state",
                                  "board_tally",
                                  "hazard_order",
                                  "told_hazard",
                                  "station",
                                  "bundle",
                                  "carried_order",
                                  "foreign_event",
                                  "foreign_fact",
                                  "told_order",
                                  "conflict",
                                  "settlement",
                                  "draft",
                                  "paper_due"};
constexpr const char *unpublished = "office_test_line";

} // namespace

QStringList exportedTables(bool internal)
{
    QStringList names;
    for (const char *table : tables)
        if (internal || table != std::string_view(unpublished))
            names << QString::fromLatin1(table);
    return names;
}

Result<void> exportTable(const Database &database, const QString &table,
                         const std::function<Result<void>(const QStringList &)> &take)
{
    const ReadSnapshot snapshot(database.connection());
    LOOPWRIGHT_TRY(snapshot.result());
    Statement statement(database, "export." + table.toStdString());
    const QStringList columns = statement.columnNames();
    LOOPWRIGHT_TRY(take(columns));
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return {};
        QStringList row;
        for (const QString &column : columns)
            row << statement.optionalText(column.toUtf8().constData()).value_or(QString());
        LOOPWRIGHT_TRY(take(row));
    }
}

Result<QStringList> tablesThere(const Database &database)
{
    Statement statement(database, "export.tables_there");
    return texts(statement, "name");
}

} // namespace loopwright
