#pragma once
// What became of a line after an order's work on it was done.

#include "core/base/Result.h"
#include "core/history/Event.h"
#include "core/order/ServiceOrder.h"
#include "db/Database.h"

#include <functional>
#include <vector>

namespace loopwright {

/// What other orders, completed after this one's work was done, made of its circuit, in a sentence;
/// empty if it is as it was. Done: completed, or what `isDone` says of one of the circuit's events,
/// whichever came first. `then`: the order as it was judged.
Result<QString> lineSince(const Database &database, const ServiceOrder &then,
                          const std::vector<Event> &ofCircuit,
                          const std::function<bool(const Event &)> &isDone = {});

} // namespace loopwright
