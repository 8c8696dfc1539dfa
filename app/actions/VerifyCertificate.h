#pragma once
// Whether a certificate that somebody hands in is the one that was issued, and still stands.

#include "app/actions/Records.h"
#include "core/history/Event.h"

#include <QJsonObject>

namespace loopwright {

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
