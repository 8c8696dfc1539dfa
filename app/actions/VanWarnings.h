#pragma once
// What a person must read before he works on an order that goes along, was opened, or came home.

#include "app/actions/Records.h"
#include "core/base/Finding.h"
#include "core/base/Moment.h"
#include "db/OrderStore.h"

namespace loopwright {

/// "hazard_open": every hazard of the pair and the premises that nobody closed.
Result<Findings> hazardWarnings(Records &records, const StoredOrder &stored);
/// "pair_changed", "identifiers_changed": what of the line is otherwise than it was.
Findings changeWarnings(const ServiceOrder &before, const ServiceOrder &now);
/// "order_out": the other stations that have it.
Finding outWarning(const QStringList &stations);
/// "file_replaced": the file held the order, which is out.
Finding fileReplacedWarning(const QString &order, const QString &file, const QString &station);
/// "clock_behind": what was opened is dated ahead of the clock here.
Finding clockBehindWarning(const Moment &now);

} // namespace loopwright
