#pragma once
// Issuing a certificate.

#include "app/actions/IssuedCertificate.h"
#include "app/actions/Records.h"
#include "app/print/Paper.h"

namespace loopwright {

struct IssueRequest
{
    QString order;
    Paper paper = Paper::A4;
    Signatures signatures = {}; ///< drawn on screen, or empty: a line to sign on
    /// Puts the finished paper where the user wants it, after the issue is recorded; what fails
    /// then can be repeated.
    std::function<Result<void>(const CertificatePaper &paper)> deliver = {};
    /// Asked before anything is recorded, so that a wrong place costs nothing.
    std::function<Result<void>()> mayDeliver = {};
};

/// Refused for an order that is neither accepted nor accepted with exception. If a certificate
/// was issued and the decision behind it still stands it is issued again, under the same number: as
/// a copy, or, if the request bears a signature that it lacks, as a further issue that is signed
/// from now on; what was signed before stays on every later issue. DiskTrouble if only the paper is
/// missing: then the record stands, and the same request makes the same paper. If the order
/// was decided anew on other evidence a newer certificate follows and the earlier one is
/// superseded.
Result<IssuedCertificate> issueCertificate(Records &records, const IssueRequest &request);
/// What issueCertificate() would issue now, for the preview: the certificate that stands, or
/// without a number what a new one would say. Refused as above.
Result<CertificateContent> previewCertificate(Records &records, const QString &order,
                                              const Signatures &signatures);

} // namespace loopwright
