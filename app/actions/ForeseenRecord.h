#pragma once
// What the record of a job asks of the records, asked together where they are far away.

#include "app/actions/Records.h"
#include "core/acceptance/Fact.h"

namespace loopwright {

/// Whatever becomes of the record. Within a change; elsewhere nothing (Connection::foresee).
void foreseeRecord(Records &records, const JobRecord &record);

} // namespace loopwright
