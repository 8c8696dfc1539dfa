#pragma once
// The parts of a certificate's content, each made in a file of its own.

#include "core/certificate/CertificateSources.h"
#include "core/certificate/SettingsLines.h"

namespace loopwright {

/// Every figure behind a criterion as it was read, oldest first. A criterion without any has its
/// measured text alone.
std::vector<CertificateReading> readingsOf(const CriterionResult &criterion,
                                           const CertificateSources &sources);
/// The runs with their times, errors, unavailable seconds, losses of synchronisation and slips.
std::vector<CertificateRun> runLines(const CertificateSources &sources, const NumberGuard &guard);
/// Services, numbers, TEIs, pair, place and NT: as ordered, and as the evidence shows them.
std::vector<CertificateDelivery> deliveryOf(const CertificateSources &sources);
/// Null if the facts do not hold it.
const Fact *factOf(const CertificateSources &sources, const QString &id);
/// Dangerous voltages that were read, with volts, time and how each was closed.
QStringList hazardLines(const CertificateSources &sources, const NumberGuard &guard);
/// Facts whose own time and the time of their recording are more than a day apart.
QStringList lateLines(const CertificateSources &sources);
/// The stop limit that a card of this place is held to: "stop above 50 V".
QString stopLimit(const LimitSet &limits, const SafetyFact &card, bool alternating);
QStringList notCoveredLines(const CertificateSources &sources);
QStringList mustKnowLines(const ServiceOrder &order);
CertificateCall callOf(const ServiceOrder &order, const ServingOffice &office,
                       const std::optional<Issuer> &issuer);
/// What is different from an earlier certificate of the order, in words.
QStringList changesBetween(const CertificateContent &before, const CertificateContent &now);

/// "call from channel B1 to channel B2 of this line", "call to a test line".
QString pathInWords(const RunFact &run);
/// The trade's words that a decision uses, in the customer's.
QString inPlainWords(QString text);

} // namespace loopwright
