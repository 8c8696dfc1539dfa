#pragma once
// What the papers of an order are made from: the order with its decision, and the register.

#include "core/acceptance/DecisionInput.h"
#include "core/certificate/CertificateContent.h"
#include "core/certificate/NumberGuard.h"

#include <QHash>

namespace loopwright {

/// What a certificate is made from. ServingOffice carries no test lines.
struct CertificateSources
{
    QString number;
    Moment issuedAt;
    DecisionInput input; ///< of the decision; the facts that it counts give readings and dates
    Decision decision;
    LimitSet limits; ///< of the decision
    ServingOffice office;
    std::optional<Issuer> issuer = {};
    QList<Instrument> instruments;
    QList<Person> people;
    Signatures signatures;
    QHash<QString, Moment> recordedAt = {};          ///< fact to the real time of its recording
    std::optional<CertificateContent> replaces = {}; ///< the certificate before this one
    QStringList replacedBecause = {};                ///< what else is known of why
};

} // namespace loopwright
