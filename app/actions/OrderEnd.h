#pragma once
// How an order ends, for the actions that end one.

#include "app/actions/Records.h"
#include "core/history/Event.h"
#include "db/OrderStore.h"

#include <functional>

namespace loopwright {

/// NotFound if there is no such order, Refused if it has ended already, or is an office's and this
/// is the van.
Result<StoredOrder> openOrder(Records &records, const QString &number);

/// Ends an order within a transaction: `change` does what its end means, then the board follows.
/// Its event, of that kind and detail.
Result<Event> endWithin(Records &records, const StoredOrder &stored, OrderStatus status,
                        const QString &kind, const QJsonObject &detail,
                        const std::function<Result<void>(Transaction &)> &change,
                        Transaction &transaction);
/// Likewise, and commits it: the held orders follow too.
Result<void> endOrder(Records &records, const StoredOrder &stored, OrderStatus status,
                      const QString &kind, const QJsonObject &detail,
                      const std::function<Result<void>(Transaction &)> &change,
                      Transaction &transaction);

} // namespace loopwright
