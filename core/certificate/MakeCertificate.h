#pragma once
// Makes the content of a certificate from an accepted order.

#include "core/certificate/CertificateSources.h"

namespace loopwright {

/// Refused if the decision does not accept the order, or the order lacks what every paper for a
/// customer names. `guard` knows the test lines of the serving office.
Result<CertificateContent> makeCertificate(const CertificateSources &sources,
                                           const NumberGuard &guard);

/// What a paper for a customer cannot do without and this order lacks: customer, premises,
/// installer. `installed`: somebody is known to have worked on it.
QStringList lacksForPaper(const ServiceOrder &order, bool installed);
/// Refused, naming what lacks.
Result<void> checkForPaper(const ServiceOrder &order, bool installed);
/// The same; whoever recorded a fact has worked on it.
Result<void> checkForPaper(const DecisionInput &input);

} // namespace loopwright
