#pragma once
// The certificate: first what the customer's line is worth, with exceptions below the verdict; then
// results, runs, what they do not cover and whom to call; both declarations; the settings of the
// terminal equipment.

#include "app/print/Document.h"
#include "core/certificate/CertificateProof.h"

namespace loopwright {

/// Which issue of a certificate a paper is. The first has no mark; a later one is marked with its
/// own date, as a copy or, if it is the first that bears a signature, as a further issue.
struct IssueMark
{
    int copy = 0;    ///< issues before it
    Moment issuedAt; ///< of this paper
    bool countersigns = false;
    Signatures later = {}; ///< given after the first issue: not in the content, nor in its digest
    std::optional<CertificateProof> proof = {}; ///< none in a preview
};

/// A content without a number is a preview: it says so, and has neither code nor QR code.
doc::Document certificateDocument(const CertificateContent &content, const IssueMark &mark,
                                  Paper paper);
Sheet certificateSheet(const CertificateContent &content, const IssueMark &mark, Paper paper);

/// The sheet, and the PDF of it with the canonical content attached as record.json, and the proof
/// as claims.txt, keys.txt and head.json.
struct CertificatePaper
{
    Sheet sheet;
    QByteArray pdf;
};
/// Refused if no font at hand has one of its characters.
Result<CertificatePaper> certificatePaper(const CertificateContent &content, const IssueMark &mark,
                                          Paper paper);

} // namespace loopwright
