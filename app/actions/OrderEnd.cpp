#include "app/actions/OrderEnd.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "db/MetaStore.h"
#include "db/StationStore.h"

#include <algorithm>

namespace loopwright {

namespace {

/// What a van took along ends in the office, which would not hear of an end in the van.
Result<void> checkIsOurs(Records &records, const QString &number)
{
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto carried, StationStore(records.database()).carried(number));
    if (std::ranges::find(carried, tag, &CarriedOrder::station) == carried.end())
        return {};
    return failure(
        ErrorCode::Refused,
        QString("Order %1 is the office's: have it completed or cancelled there.").arg(number));
}

} // namespace

Result<StoredOrder> openOrder(Records &records, const QString &number)
{
    auto stored = OrderStore(records.database()).get(number);
    if (stored && stored->status != OrderStatus::Open)
        return failure(ErrorCode::Refused,
                       QString("Order %1 is %2 already.").arg(number, toText(stored->status)));
    if (stored)
        LOOPWRIGHT_TRY(checkIsOurs(records, number));
    return stored;
}

Result<Event> endWithin(Records &records, const StoredOrder &stored, OrderStatus status,
                        const QString &kind, const QJsonObject &detail,
                        const std::function<Result<void>(Transaction &)> &change,
                        Transaction &transaction)
{
    LOOPWRIGHT_TRY(change(transaction));
    LOOPWRIGHT_TRY(OrderStore::setStatus(transaction, stored.order.number, status));
    LOOPWRIGHT_TRY(refreshState(records, transaction, stored.order.number));
    return orderEvent(records, stored.order, kind, detail);
}

Result<void> endOrder(Records &records, const StoredOrder &stored, OrderStatus status,
                      const QString &kind, const QJsonObject &detail,
                      const std::function<Result<void>(Transaction &)> &change,
                      Transaction &transaction)
{
    LOOPWRIGHT_ASSIGN(const auto ended,
                      endWithin(records, stored, status, kind, detail, change, transaction));
    std::vector<Event> events{ended};
    LOOPWRIGHT_TRY(claimForHeldOrders(records, transaction, events));
    return transaction.commit(events);
}

} // namespace loopwright
