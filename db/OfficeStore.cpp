#include "db/OfficeStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

ServingOffice readOffice(const Statement &row)
{
    return {row.text("office"),  row.text("name"),      row.text("protocol_variant"),
            row.text("address"), row.text("telephone"), row.text("trouble_telephone")};
}

Issuer readIssuer(const Statement &row)
{
    return {row.text("name"), row.text("address"), row.text("telephone"),
            row.text("trouble_telephone"), row.text("trouble_hours")};
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
    const QString digest = digestOf(office.toJson());
    Statement put(transaction, "office.put");
    put.bind("office", office.key)
        .bind("name", office.name)
        .bind("protocol_variant", office.protocolVariant)
        .bind("address", office.address)
        .bind("telephone", office.telephone)
        .bind("trouble_telephone", office.troubleTelephone)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.write());
    Statement remove(transaction, "office.remove_test_lines");
    LOOPWRIGHT_TRY(remove.bind("office", office.key).write());
    for (const TestLine &line : testLines) {
        Statement add(transaction, "office.add_test_line");
        add.bind("office", office.key)
            .bind("label", line.label)
            .bind("number", line.number.forInstallersOnly());
        LOOPWRIGHT_TRY(add.write());
    }
    transaction.seal(registerSubject(), {"office", office.key, digest});
    return {};
}

Result<std::optional<Issuer>> OfficeStore::issuer() const
{
    Statement statement(m_database, "office.issuer");
    return firstRow(statement, readIssuer);
}

Result<void> OfficeStore::putIssuer(Transaction &transaction, const Issuer &issuer)
{
    const QString digest = digestOf(issuer.toJson());
    Statement put(transaction, "office.put_issuer");
    put.bind("name", issuer.name)
        .bind("address", issuer.address)
        .bind("telephone", issuer.telephone)
        .bind("trouble_telephone", issuer.troubleTelephone)
        .bind("trouble_hours", issuer.troubleHours)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.write());
    transaction.seal(registerSubject(), {"issuer", "issuer", digest});
    return {};
}

} // namespace loopwright
