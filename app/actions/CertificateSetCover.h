#pragma once
// What the cover of a certificate set says of each line and of the visit; unpublished numbers are
// covered, since a cover goes to the customer.

#include "app/actions/CertificateSetLines.h"
#include "app/print/CoverSheet.h"

namespace loopwright {

/// Customer, premises and visit.
Result<void> putHead(Records &records, const Certifying &about, CoverContent &cover);
/// `made` is null if the line has no certificate.
Result<CoverLine> coverLine(Records &records, const SetLine &line, const Certifying &about,
                            const MadeIssue *made);

} // namespace loopwright
