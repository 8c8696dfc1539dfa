#include "app/actions/History.h"

#include "db/EventStore.h"
#include "db/HistoryCheck.h"
#include "db/OrderStore.h"

namespace loopwright {

Result<std::vector<Event>> orderHistory(Records &records, const QString &orderNumber)
{
    LOOPWRIGHT_TRY(OrderStore(records.database()).get(orderNumber));
    return EventStore(records.database()).ofOrder(orderNumber);
}

Result<HistoryVerdict> verifyHistory(Records &records, const Progress &progress)
{
    LOOPWRIGHT_ASSIGN(const auto found, checkHistory(records.database(), progress));
    HistoryVerdict verdict;
    verdict.events = found.events;
    for (const HistoryFault &fault : found.faults)
        verdict.broken.push_back({fault.subject, fault.event, fault.what});
    return verdict;
}

QJsonObject HistoryVerdict::toJson() const
{
    QJsonArray list;
    for (const BrokenLink &link : broken)
        list << QJsonObject{{"subject", link.subject}, {"event", link.event}, {"what", link.what}};
    return {{"verdict", broken.empty() ? "whole" : "broken"}, {"events", events}, {"broken", list}};
}

} // namespace loopwright
