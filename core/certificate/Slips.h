#pragma once
// The small papers that stay behind: for the customer of a line that was not accepted, and for the
// desk that an accepted one is closed with. Unpublished numbers are covered in both.

#include "core/certificate/CertificateSources.h"

namespace loopwright {

struct LeaveBehindSlip
{
    QString order, customer, premises, circuit;
    QString visited;     ///< days, and by whom; empty if nobody was there
    QString symptom;     ///< of a repair: what the customer said; else empty
    QStringList done;    ///< what was shown, in the customer's words
    QStringList hazards; ///< dangerous voltages that were read, and how each was closed
    QStringList missing; ///< what failed or was not shown
    QStringList next;    ///< what happens next
    CertificateCall call;
    Issuer issuer;
};
/// Refused for an accepted order, which gets a certificate, and without customer, premises or
/// installer.
Result<LeaveBehindSlip> leaveBehindSlip(const CertificateSources &sources,
                                        const NumberGuard &guard);

struct CloseOutSlip
{
    QString order, customer, premises, circuit, office;
    QString completionNumber; ///< read back to the desk
    QString outcome;
    QString tested; ///< days, and by whom
    QString desk;   ///< telephone; empty if the register has none
    /// Name of the criterion and its figure.
    std::vector<std::pair<QString, CertificateReading>> readings;
    std::vector<CertificateDelivery> delivery; ///< numbers as tested among them
    std::vector<CertificateTerminal> terminals;
    QStringList hazards;    ///< dangerous voltages that were read, and how each was closed
    QStringList exceptions; ///< what is not met or not shown, and who accepted it why
};
/// Refused for an order that is not accepted, and as above.
Result<CloseOutSlip> closeOutSlip(const CertificateSources &sources, const NumberGuard &guard);

/// Ten digits to read aloud, "4821 7730 44": eight that follow from the order and what its
/// acceptance rests on, and two check digits, so that a digit misheard is noticed. Deciding again
/// on the same evidence gives the same number.
QString completionNumber(const Decision &decision);

} // namespace loopwright
