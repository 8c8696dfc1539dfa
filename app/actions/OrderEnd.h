#pragma once
// How an order ends, for the actions that end one.

#include "app/actions/Records.h"
#include "db/OrderStore.h"

#include <functional>

namespace loopwright {

/// NotFound if there is no such order, Refused if it has ended already.
Result<StoredOrder> openOrder(Records &records, const QString &number);

/// Ends an order in one transaction and commits it: `change` does what its end means, then the
/// board and the held orders follow. `kind` and `detail` are the event's.
Result<void> endOrder(Records &records, const StoredOrder &stored, OrderStatus status,
                      const QString &kind, const QJsonObject &detail,
                      const std::function<Result<void>(Transaction &)> &change,
                      Transaction &transaction);

} // namespace loopwright
