#include "app/actions/OrderEnd.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"

namespace loopwright {

Result<StoredOrder> openOrder(Records &records, const QString &number)
{
    auto stored = OrderStore(records.database()).get(number);
    if (stored && stored->status != OrderStatus::Open)
        return failure(ErrorCode::Refused,
                       QString("Order %1 is %2 already.").arg(number, toText(stored->status)));
    return stored;
}

Result<void> endOrder(Records &records, const StoredOrder &stored, OrderStatus status,
                      const QString &kind, const QJsonObject &detail,
                      const std::function<Result<void>(Transaction &)> &change,
                      Transaction &transaction)
{
    LOOPWRIGHT_TRY(change(transaction));
    LOOPWRIGHT_TRY(OrderStore::setStatus(transaction, stored.order.number, status));
    LOOPWRIGHT_TRY(refreshState(records, transaction, stored.order.number));
    LOOPWRIGHT_ASSIGN(auto events, claimForHeldOrders(records, transaction));
    events.insert(events.begin(), orderEvent(records, stored.order, kind, detail));
    return transaction.commit(events);
}

} // namespace loopwright
