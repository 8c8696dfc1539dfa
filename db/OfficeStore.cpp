#include "db/OfficeStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

ServingOffice readOffice(const Statement &row)
{
    return {row.text("office"), row.text("name"), row.text("protocol_variant")};
}

} // namespace

Result<std::optional<ServingOffice>> OfficeStore::find(const QString &key) const
{
    Statement statement(m_database, "office.find");
    statement.bind("office", key);
    return firstRow(statement, readOffice);
}

Result<std::vector<ServingOffice>> OfficeStore::all() const
{
    Statement statement(m_database, "office.all");
    return rows(statement, readOffice);
}

Result<QList<TestLine>> OfficeStore::testLines(const QString &key) const
{
    Statement statement(m_database, "office.test_lines");
    statement.bind("office", key);
    const auto lines = rows(statement, [](const Statement &row) {
        return TestLine{row.text("label"), UnpublishedNumber(row.text("number"))};
    });
    if (!lines)
        return failure(lines.error());
    return QList<TestLine>(lines->begin(), lines->end());
}

Result<void> OfficeStore::put(Transaction &transaction, const ServingOffice &office,
                              const QList<TestLine> &testLines)
{
    const QString digest = digestOf(QJsonObject{{"office", office.key},
                                                {"name", office.name},
                                                {"protocol_variant", office.protocolVariant}});
    Statement put(transaction, "office.put");
    put.bind("office", office.key)
        .bind("name", office.name)
        .bind("protocol_variant", office.protocolVariant)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.run());
    Statement remove(transaction, "office.remove_test_lines");
    LOOPWRIGHT_TRY(remove.bind("office", office.key).run());
    for (const TestLine &line : testLines) {
        Statement add(transaction, "office.add_test_line");
        add.bind("office", office.key)
            .bind("label", line.label)
            .bind("number", line.number.forInstallersOnly());
        LOOPWRIGHT_TRY(add.run());
    }
    transaction.seal(registerSubject(), {"office", office.key, digest});
    return {};
}

} // namespace loopwright
