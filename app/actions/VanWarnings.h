#pragma once
// What a person must read before he works on an order that goes along, was opened, or came home.

#include "app/actions/Records.h"
#include "core/base/Finding.h"
#include "core/base/Moment.h"
#include "db/OrderStore.h"

namespace loopwright {

/// The hazards of the pair and the premises of an order.
struct HazardsAround
{
    std::vector<Text> open; ///< that nobody closed
    QStringList orders;     ///< others that hold one, or its closing: exactly those that decide it
};
Result<HazardsAround> hazardsAround(Records &records, const StoredOrder &stored);

/// "hazard_open" for each.
Findings hazardWarnings(const std::vector<Text> &open);
/// "pair_changed", "identifiers_changed": what of the line is otherwise than it was.
Findings changeWarnings(const ServiceOrder &before, const ServiceOrder &now);
/// "order_out": the other stations that have it.
Finding outWarning(const QStringList &stations);
/// "conflict_open": nobody decided on what the office and the van have otherwise.
Finding undecidedWarning();
/// "file_replaced": the file held the order, which is out.
Finding fileReplacedWarning(const QString &order, const QString &file, const QString &station);
/// "clock_behind": what was opened is dated ahead of the clock here.
Finding clockBehindWarning(const Moment &now);

} // namespace loopwright
