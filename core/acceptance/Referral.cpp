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
        else if (provenBy(*fact) != Proves::Nothing || fact->as<VisitFact>())
            referral = nullptr;
    }
    return referral;
}

} // namespace loopwright
