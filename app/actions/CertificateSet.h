#pragma once
// The certificates of all lines at one premises together: each keeps its own number, digest and
// file; a cover lists every line there, those without a certificate with stage and reason.

#include "app/actions/CertificateSetLines.h"
#include "app/print/CoverSheet.h"
#include "app/print/Sheet.h"

namespace loopwright {

/// A file of the set; its name is made of the order's number.
struct SetFile
{
    QString name; ///< "certificate-A-1001.pdf", "cover-A-1001.pdf"
    QByteArray pdf;
};

struct SetPapers
{
    std::vector<SetFile> files;
    std::vector<Sheet> sheets; ///< for a printer: each cover before its certificates
};

struct SetRequest
{
    QString order; ///< any order at the premises
    Paper paper = Paper::A4;
    /// Drawn on screen. Each new certificate gets the installer's; that of the customer goes on the
    /// lines of the order's customer alone.
    Signatures signatures = {};
    /// Puts the papers where the user wants them, after the issues are recorded.
    std::function<Result<void>(const SetPapers &papers)> deliver = {};
    /// Asked before anything is recorded.
    std::function<Result<void>(const SetPapers &papers)> mayDeliver = {};
};

struct SetCertificate
{
    IssuedCertificate issued;
    QString file;
};

struct IssuedSet
{
    QString premises;
    std::vector<SetCertificate> certificates;
    std::vector<SetLine> without; ///< lines that have none, with the reason
    QStringList covers;           ///< files; one for each customer, who need not know of each other

    QStringList doubts() const; ///< of the copies that stand no longer
    QJsonObject toJson() const;
};

/// In one transaction. Refused, with what each line lacks, if no line may have a certificate;
/// DiskTrouble if only the papers are missing, as of one certificate.
Result<IssuedSet> issueCertificateSet(Records &records, const SetRequest &request);

/// Writes the files into the folder, which is made if it is not there; DiskTrouble if one
/// cannot be written. Those that were written before it stay: they are issued.
Result<void> writeSet(const QString &folder, const std::vector<SetFile> &files);
/// Whether writeSet() could, as things stand.
Result<void> checkSet(const QString &folder, const std::vector<SetFile> &files);

} // namespace loopwright
