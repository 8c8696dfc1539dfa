#pragma once
// What the cover of a certificate set says of each line and of the visit; unpublished numbers are
// covered, since a cover goes to the customer.

#include "app/actions/CertificateSet.h"
#include "app/actions/Issuing.h"

namespace loopwright {

/// Who was there last for an order, and on which day.
struct LastWork
{
    QString installer;
    QDate day;

    bool operator==(const LastWork &) const = default;
};

/// By time; the last one is the newest.
std::vector<LastWork> workOn(const std::vector<Fact> &facts);

/// Customer, premises and visit.
Result<void> putHead(Records &records, const Certifying &about, CoverContent &cover);
/// `made` is null where the line has no certificate.
Result<CoverLine> coverLine(Records &records, const SetLine &line, const Certifying &about,
                            const MadeIssue *made);

} // namespace loopwright
