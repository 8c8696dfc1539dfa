#pragma once
// Whether a certificate that somebody hands in is the one that was issued (the verdict), and
// whether what it says still holds (does it stand): two questions, and a true paper may stand no
// longer.

#include "app/actions/IssuedCertificate.h"
#include "app/actions/Troubles.h"
#include "core/certificate/CertificateClaims.h"
#include "core/history/Event.h"
#include "core/history/PublicKey.h"

#include <QJsonObject>

namespace loopwright {

enum class CertificateVerdict
{
    Genuine,
    Altered,
    Superseded, ///< by a newer certificate for the order
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

/// The record within a file: it may be true though the pages around it were changed.
enum class RecordVerdict
{
    Genuine,
    Altered,
    Missing
};
template<>
struct EnumCodes<RecordVerdict>
{
    static constexpr std::pair<RecordVerdict, const char *> table[] = {
        {RecordVerdict::Genuine, "genuine"},
        {RecordVerdict::Altered, "altered"},
        {RecordVerdict::Missing, "missing"}};
};

struct CertificateCheck
{
    CertificateVerdict verdict = CertificateVerdict::Unknown;
    QString certificate;
    QString order;
    QString reason; ///< for the verdict, one sentence
    std::optional<bool> stands = {};
    QString because = {}; ///< it stands no longer, or cannot be told; one sentence
    RecordVerdict record = RecordVerdict::Missing;
    /// What was certified, from what is signed, not from the paper; for comparison.
    std::optional<CertificateClaims> claims = {};
    QString signedBy = {};         ///< "station K7M4QP, key 3f2a …"; empty if nobody known signed
    std::vector<Event> later = {}; ///< what was recorded on the circuit afterwards
    /// Of the circuit, opened afterwards: they stand beside it and unmake nothing.
    std::vector<Trouble> troubles = {};

    static CertificateCheck unknown(const QString &reason);
    /// Genuine, and not known to stand no longer.
    bool isGood() const;
    QJsonObject toJson() const;
};

/// `file` is a PDF, or the text of the square on its first page.
Result<CertificateCheck> verifyCertificateFile(Records &records, const QByteArray &file);
/// `code` is the short check code or the whole digest.
Result<CertificateCheck> verifyCertificateNumber(Records &records, const QString &number,
                                                 const QString &code);
/// Why what a certificate of the records says holds no longer, in one sentence; empty: it stands,
/// or nobody can tell.
Result<QString> standsNoLonger(Records &records, const QString &number);
/// Puts it into what was issued again: the line may have become another since.
void tellStanding(Records &records, IssuedCertificate &issued);
/// By public keys alone, without any records: whether it stands cannot be told.
CertificateCheck verifyByKeys(const QByteArray &file, const std::vector<PublicKey> &keys);

} // namespace loopwright
