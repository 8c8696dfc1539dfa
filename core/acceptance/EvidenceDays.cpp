#include "core/acceptance/EvidenceDays.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

EvidenceDays evidenceDays(const DecisionInput &input)
{
    const std::vector<const Fact *> standing = standingFacts(input.facts);
    EvidenceDays days;
    QSet<QString> visits;
    for (const Fact *fact : standing) {
        const bool onSite = isMadeOnSite(*fact);
        if (input.afterEnd.contains(fact->id) || (!onSite && !fact->as<ExceptionFact>()))
            continue;
        const QDate day = timeOf(*fact).localDate();
        days.newest = days.newest.isValid() ? std::max(days.newest, day) : day;
        if (onSite)
            visits.insert(input.visits.empty() ? visitName(*fact, standing)
                                               : visitName(*fact, input.visits));
    }
    days.visits = int(visits.size());
    return days;
}

QDate acceptanceDay(OrderStatus status, OrderOutcome outcome, const EvidenceDays &days,
                    QDate takenOn)
{
    if (status == OrderStatus::Cancelled || !isAccepted(outcome))
        return {};
    return days.newest.isValid() ? days.newest : takenOn;
}

} // namespace loopwright
