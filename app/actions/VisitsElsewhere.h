#pragma once
// Orders at one premises share the visits there, and the self-tests that were made on them.

#include "core/acceptance/Visits.h"
#include "core/order/ServiceOrder.h"
#include "db/Database.h"

#include <vector>

namespace loopwright {

/// What those who worked for the order said of visits and self-tests at its premises elsewhere.
Result<std::vector<Fact>> visitsInOtherOrders(const Database &database, const ServiceOrder &order,
                                              const std::vector<Fact> &facts);

/// The visits to the premises of an order that its facts and those of other orders there record: on
/// the days of its facts, and on `today` if it is valid.
Result<std::vector<Visit>> visitsToPremises(const Database &database, const ServiceOrder &order,
                                            const std::vector<Fact> &facts, QDate today);

} // namespace loopwright
