#include "app/desktop/job/VisitState.h"

#include "core/safety/SafetyFact.h"

namespace loopwright {

std::optional<Moment> openVisit(const OrderView &view, const Moment &now)
{
    std::optional<Moment> open;
    for (const FactView &entry : view.facts) {
        const auto *visit = entry.fact.as<VisitFact>();
        if (entry.voided || !visit || !visit->arrived)
            continue;
        if (!visit->left && visit->arrived->localDate() == now.localDate())
            open = visit->arrived;
        else if (visit->left && open && *open == *visit->arrived)
            open.reset();
    }
    return open;
}

std::optional<SafetyVerdict> safetyOfVisit(const OrderView &view, const LimitSet &limits,
                                           const Moment &now)
{
    const auto arrived = openVisit(view, now);
    std::optional<SafetyVerdict> verdict;
    for (const FactView &entry : view.facts) {
        const auto *card = entry.fact.as<SafetyFact>();
        const bool thisVisit =
            arrived ? entry.fact.at >= *arrived : entry.fact.at.localDate() == now.localDate();
        if (card && !entry.voided && thisVisit)
            verdict = judge(*card, limits);
    }
    return verdict;
}

} // namespace loopwright
