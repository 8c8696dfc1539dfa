#pragma once
// Makes the content of a certificate from an accepted order.

#include "core/acceptance/Fact.h"
#include "core/certificate/CertificateContent.h"
#include "core/certificate/NumberGuard.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

/// What a certificate is made from. ServingOffice carries no test lines.
struct CertificateSources
{
    QString number;
    Moment issuedAt;
    ServiceOrder order;
    ServingOffice office;
    Decision decision;
    std::vector<Fact> facts; ///< of the order; those that the decision counts give dates and names
    QList<Instrument> instruments;
    QList<Person> people;
    Signatures signatures;
};

/// Refused if the decision does not accept the order. `guard` knows the test lines of the
/// serving office.
Result<CertificateContent> makeCertificate(const CertificateSources &sources,
                                           const NumberGuard &guard);

/// What a channel or the line carries, for a person: "B1": "voice, data at 64 kbit/s".
std::vector<CertificateLine> serviceLines(const ServiceOrder &order);
/// The terminals of an order with their numbers and identifiers grouped for reading aloud.
std::vector<CertificateTerminal> terminalLines(const ServiceOrder &order);
/// What every terminal is programmed with: protocol variant, data rate, prefix.
std::vector<CertificateLine> terminalSettings(const ServiceOrder &order);

} // namespace loopwright
