#pragma once
// Orders at one premises share the visits there, and the self-tests that were made on them.

#include "core/acceptance/Fact.h"
#include "core/order/ServiceOrder.h"
#include "db/Database.h"

#include <vector>

namespace loopwright {

/// What those who worked for the order said of visits and self-tests at its premises elsewhere.
Result<std::vector<Fact>> visitsInOtherOrders(const Database &database, const ServiceOrder &order,
                                              const std::vector<Fact> &facts);

} // namespace loopwright
