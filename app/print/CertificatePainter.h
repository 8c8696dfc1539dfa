#pragma once
// The certificate as pages: first the customer's result, then the settings to program into the
// terminal equipment with both signatures. What does not fit is set closer, and then continues on a
// further page; nothing is cut.

#include "app/print/Sheet.h"
#include "core/acceptance/JobLine.h"
#include "core/certificate/CertificateContent.h"

namespace loopwright {

/// Which issue of a certificate a paper is. The first has no mark; a later one is marked with its
/// own date, as a copy or, if it is the first that bears a signature, as a further issue.
struct IssueMark
{
    int copy = 0;    ///< issues before it
    Moment issuedAt; ///< of this paper
    bool countersigns = false;
    Signatures later = {}; ///< given after the first issue: not in the content, nor in its digest
};

/// A content without a number is a preview: it says so, and has neither code nor QR code.
Sheet certificateSheet(const CertificateContent &content, const IssueMark &mark, Paper paper);

/// The sheet, and the PDF of it with the canonical content attached as record.json.
struct CertificatePaper
{
    Sheet sheet;
    QByteArray pdf;
};
/// BadInput if the fonts are not installed.
Result<CertificatePaper> certificatePaper(const CertificateContent &content, const IssueMark &mark,
                                          Paper paper);

/// Text of the QR code: the number, then the whole digest.
QString certificateQrText(const CertificateContent &content);

} // namespace loopwright
