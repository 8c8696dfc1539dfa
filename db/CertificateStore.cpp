#include "db/CertificateStore.h"

#include "db/OrderStore.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

StoredCertificate readCertificate(const Statement &row)
{
    return {row.text("number"),  row.text("order_number"), row.text("decision"), row.moment("at"),
            row.json("content"), row.text("digest"),       row.bytes("claims")};
}

CertificateIssue readIssue(const Statement &row)
{
    return {int(row.integer("issue")), row.text("file_sha256"), row.text("paper"),
            row.moment("at")};
}

} // namespace

Result<std::optional<StoredCertificate>> CertificateStore::find(const QString &number) const
{
    Statement statement(m_database, "certificate.find");
    statement.bind("number", number);
    return firstRow(statement, readCertificate);
}

Result<std::vector<StoredCertificate>> CertificateStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "certificate.of_order");
    statement.bind("order_number", order);
    return rows(statement, readCertificate);
}

Result<QSet<QString>> CertificateStore::ordersOfOffice(const QString &office) const
{
    Statement statement(m_database, "certificate.orders_of_office");
    statement.bind("office", office);
    LOOPWRIGHT_ASSIGN(const auto numbers, rows(statement, [](const Statement &row) {
                          return row.text("order_number");
                      }));
    return QSet<QString>(numbers.begin(), numbers.end());
}

Result<int> CertificateStore::nextSequence(int year, const QString &station) const
{
    // The form of a number is that of CertificateNumber: 26-K7M4QP-00042-18.
    const QString begin = QString("%1-%2-").arg(year % 100, 2, 10, QChar('0')).arg(station);
    Statement statement(m_database, "certificate.newest_like");
    statement.bind("begin", begin);
    const auto newest =
        firstRow(statement, [](const Statement &row) { return row.text("number"); });
    if (!newest)
        return failure(newest.error());
    return *newest ? (*newest)->mid(begin.size(), 5).toInt() + 1 : 1;
}

Result<std::vector<CertificateIssue>> CertificateStore::issuesOf(const QString &number) const
{
    Statement statement(m_database, "certificate.issues");
    statement.bind("number", number);
    return rows(statement, readIssue);
}

Result<std::optional<QString>> CertificateStore::numberOfFile(const QString &fileSha256) const
{
    Statement statement(m_database, "certificate.by_file");
    statement.bind("file_sha256", fileSha256);
    return firstRow(statement, [](const Statement &row) { return row.text("number"); });
}

Result<void> CertificateStore::add(Transaction &transaction, const StoredCertificate &certificate)
{
    LOOPWRIGHT_ASSIGN(const auto subject,
                      OrderStore(transaction.database()).subjectOf(certificate.order));
    LOOPWRIGHT_ASSIGN(const auto before,
                      CertificateStore(transaction.database()).find(certificate.number));
    if (before)
        return failure(ErrorCode::BadInput, "is the number of another certificate",
                       certificate.number);
    const QByteArray content = canonicalJson(certificate.content);
    const QString digest = sha256Hex(content);
    Statement add(transaction, "certificate.add");
    add.bind("number", certificate.number)
        .bind("order_number", certificate.order)
        .bind("decision", certificate.decision)
        .bindMoment("at", certificate.at)
        .bindBytes("content", content)
        .bind("digest", digest)
        .bindBytes("claims", certificate.claims);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(subject, {"certificate", certificate.number, digest});
    return {};
}

Result<CertificateIssue> CertificateStore::addIssue(Transaction &transaction, const QString &number,
                                                    const QString &fileSha256, const QString &paper,
                                                    const Moment &at)
{
    const CertificateStore store(transaction.database());
    LOOPWRIGHT_ASSIGN(const auto certificate, store.find(number));
    if (!certificate)
        return failure(ErrorCode::NotFound, "there is no certificate " + number);
    LOOPWRIGHT_ASSIGN(const auto subject,
                      OrderStore(transaction.database()).subjectOf(certificate->order));
    LOOPWRIGHT_ASSIGN(const auto before, store.issuesOf(number));
    const CertificateIssue issue{int(before.size()) + 1, fileSha256, paper, at};
    Statement add(transaction, "certificate.add_issue");
    add.bind("number", number)
        .bind("issue", issue.issue)
        .bind("file_sha256", fileSha256)
        .bind("paper", paper)
        .bindMoment("at", at);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(
        subject, {"certificate_issue", QString("%1/%2").arg(number).arg(issue.issue), fileSha256});
    return issue;
}

Result<void> CertificateStore::setDue(Transaction &transaction, const QString &number, int issue)
{
    Statement set(transaction, "certificate.set_due");
    LOOPWRIGHT_ASSIGN(const auto changed, set.bind("number", number).bind("issue", issue).run());
    transaction.countDraftChanges(changed);
    return {};
}

Result<void> CertificateStore::clearDue(Transaction &transaction, const QString &number)
{
    Statement clear(transaction, "certificate.clear_due");
    LOOPWRIGHT_ASSIGN(const auto changed, clear.bind("number", number).run());
    transaction.countDraftChanges(changed);
    return {};
}

Result<std::optional<CertificateIssue>> CertificateStore::dueOf(const QString &number) const
{
    Statement statement(m_database, "certificate.due");
    statement.bind("number", number);
    return firstRow(statement, readIssue);
}

} // namespace loopwright
