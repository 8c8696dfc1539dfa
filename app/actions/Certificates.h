#pragma once
// Issuing a certificate and checking one that somebody hands in.

#include "app/actions/Records.h"
#include "app/print/Paper.h"
#include "core/certificate/CertificateContent.h"
#include "core/history/Event.h"

#include <QJsonObject>

namespace loopwright {

struct IssueRequest
{
    QString order;
    Paper paper = Paper::A4;
    Signatures signatures = {}; ///< drawn on screen, or empty: a line to sign on
    /// Puts the finished PDF where the user wants it. Its failure undoes the issue.
    std::function<Result<void>(const QByteArray &pdf)> deliver;
};

struct IssuedCertificate
{
    CertificateContent content;
    QString number, digest, code;
    int pages = 0;
    bool copy = false; ///< issued before: the same certificate, marked as a copy

    QJsonObject toJson() const;
};

/// Refused for an order that is neither accepted nor accepted with exception. Where a certificate
/// was issued and the decision behind it still stands it is issued again as a copy; where the order
/// was decided anew on other evidence a newer certificate follows and the earlier one is
/// superseded.
Result<IssuedCertificate> issueCertificate(Records &records, const IssueRequest &request);
/// What issueCertificate() would issue now, for the preview: the certificate that stands, or
/// without a number what a new one would say. Refused as above.
Result<CertificateContent> previewCertificate(Records &records, const QString &order,
                                              const Signatures &signatures);

enum class CertificateVerdict
{
    Genuine,
    Altered,
    Superseded,
    Unknown
};
template<>
struct EnumCodes<CertificateVerdict>
{
    static constexpr std::pair<CertificateVerdict, const char *> table[] = {
        {CertificateVerdict::Genuine, "genuine"},
        {CertificateVerdict::Altered, "altered"},
        {CertificateVerdict::Superseded, "superseded"},
        {CertificateVerdict::Unknown, "unknown"}};
};

struct CertificateCheck
{
    CertificateVerdict verdict = CertificateVerdict::Unknown;
    QString certificate;
    QString order;
    QString reason;           ///< one sentence
    std::vector<Event> later; ///< what was recorded on the circuit afterwards; changes nothing

    QJsonObject toJson() const;
};

Result<CertificateCheck> verifyCertificateFile(Records &records, const QByteArray &pdf);
/// `code` is the short check code or the whole digest.
Result<CertificateCheck> verifyCertificateNumber(Records &records, const QString &number,
                                                 const QString &code);

} // namespace loopwright
