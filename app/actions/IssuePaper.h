#pragma once
// The paper of one issue of a certificate, with what proves it. Made from what the records hold, so
// that the same issue can be made again byte for byte.

#include "app/actions/Keys.h"
#include "app/print/CertificateDocument.h"
#include "db/CertificateStore.h"

namespace loopwright {

/// The claims of a certificate, signed.
SignedClaims signedClaims(const CertificateContent &content, const Signer &signer);

/// What the papers of a certificate carry, when the log ends at `head`.
Result<CertificateProof> proofOf(const Database &database, const SignedClaims &claims,
                                 const LogHead &head, const Signer &signer);

/// Laid out and sealed by the signer.
Result<CertificatePaper> sealedPaper(const CertificateContent &content, const IssueMark &mark,
                                     Paper paper, const Signer &signer);
/// The same byte for byte as it was given out, in whichever language that was; nothing where no
/// language of the program makes that file.
Result<std::optional<CertificatePaper>> paperMadeAgain(const CertificateContent &content,
                                                       const IssueMark &mark, Paper paper,
                                                       const Signer &signer, const QString &sha256);

/// Of those who signed a certificate after its first issue, oldest first; up to an issue, or all.
Result<Signatures> laterSignatures(const Database &database, const QString &order,
                                   const QString &certificate, int upToIssue = 0);

/// What an event says of an issue, and `issueMark` reads from it.
QJsonObject issueDetail(const QString &certificate, const QString &digest, int issue,
                        const LogHead &head);
/// The mark of an issue that was made before. DatabaseTrouble if its event is not there.
Result<IssueMark> issueMark(const Database &database, const StoredCertificate &certificate,
                            const CertificateIssue &issue, const Signer &signer);

inline const QString signedEvent = QStringLiteral("certificate_signed");

} // namespace loopwright
