#pragma once
// The values of an order that comes home: made of what the office says and of what each station
// told, whoever told it first.

#include "app/actions/Joining.h"
#include "app/actions/Records.h"
#include "core/base/Finding.h"
#include "core/history/Event.h"
#include "db/OrderStore.h"

namespace loopwright {

struct JoinedValues
{
    std::optional<StoredOrder> before; ///< the order as it was here
    QStringList known; ///< facts that the station told, or had from others, until now
    std::vector<Event> events;
    Findings kept; ///< "value_kept": columns in which what the van changed is not what counts
};
/// Refused with the code in the place: "unknown_order", "number_in_use". `facts`: all that it
/// brings.
Result<JoinedValues> joinValues(Records &records, Transaction &transaction, const Joining &joining,
                                const std::vector<Fact> &facts);

} // namespace loopwright
