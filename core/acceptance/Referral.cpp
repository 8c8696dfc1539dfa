#include "core/acceptance/Referral.h"

#include "core/acceptance/Proof.h"
#include "core/acceptance/Visits.h"

namespace loopwright {

const Fact *standingReferral(const std::vector<Fact> &facts)
{
    const Fact *referral = nullptr;
    for (const Fact *fact : standingFacts(facts)) {
        if (fact->as<ReferredFact>())
            referral = fact;
        else if (isEvidence(*fact) || fact->as<VisitFact>())
            referral = nullptr;
    }
    return referral;
}

const Fact *hazardReferral(const std::vector<const Fact *> &standing, const Moment &readAt)
{
    const Fact *told = nullptr, *toldUtility = nullptr;
    for (const Fact *fact : standing) {
        const auto *referred = fact->as<ReferredFact>();
        if (!referred || fact->at < readAt)
            continue;
        told = fact;
        if (referred->waitingOn == WaitingOn::PowerUtility)
            toldUtility = fact;
    }
    return toldUtility ? toldUtility : told;
}

} // namespace loopwright
