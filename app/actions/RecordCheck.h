#pragma once
// What must be true of a record before any of it is taken.

#include "app/actions/Records.h"
#include "core/acceptance/Fact.h"

namespace loopwright {

/// BadInput with its place if a fact does not fit the order, lies more than a day ahead of the
/// clock, or names another fact that is not there.
Result<void> checkRecord(Records &records, const JobRecord &record, const ServiceOrder &order,
                         const QString &place);

/// The name of a fact that has none yet: a UUID of its own.
QString newFactId();

/// "job.json.facts[3]"
QString placeOf(const QString &record, std::size_t fact);

} // namespace loopwright
