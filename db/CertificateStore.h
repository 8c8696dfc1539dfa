#pragma once
// Certificates as canonical content, and each file that was made of one: the first is the original,
// every other one a copy or a further issue that was signed later. Only ever added.

#include "core/base/Json.h"
#include "db/Transaction.h"

#include <QSet>

namespace loopwright {

struct StoredCertificate
{
    QString number;
    QString order;
    QString decision; ///< id of the decision behind it
    Moment at;
    QJsonObject content;
    QString digest;    ///< SHA-256 of the canonical content
    QByteArray claims; ///< SignedClaims::text()
};

struct CertificateIssue
{
    int issue = 1; ///< from 1
    QString fileSha256;
    QString paper; ///< "a4" or "letter"
    Moment at;
};

class CertificateStore
{
public:
    explicit CertificateStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<StoredCertificate>> find(const QString &number) const;
    Result<std::vector<StoredCertificate>> ofOrder(const QString &order) const; ///< oldest first
    Result<QSet<QString>> ordersOfOffice(const QString &office) const;          ///< that have one
    /// The next free sequence number of a year and station, from 1 (CertificateNumber).
    Result<int> nextSequence(int year, const QString &station) const;
    Result<std::vector<CertificateIssue>> issuesOf(const QString &number) const;
    /// The certificate that a file with this SHA-256 was made of.
    Result<std::optional<QString>> numberOfFile(const QString &fileSha256) const;

    /// BadInput if the number is given out already. The digest is computed here.
    static Result<void> add(Transaction &transaction, const StoredCertificate &certificate);
    /// The number of the issue is given here.
    static Result<CertificateIssue> addIssue(Transaction &transaction, const QString &number,
                                             const QString &fileSha256, const QString &paper,
                                             const Moment &at);

    // The paper of an issue is written after the issue is recorded: until then it is due. These
    // notes have no history.
    static Result<void> setDue(Transaction &transaction, const QString &number, int issue);
    static Result<void> clearDue(Transaction &transaction, const QString &number);
    Result<std::optional<CertificateIssue>> dueOf(const QString &number) const;

private:
    const Database &m_database;
};

} // namespace loopwright
