#pragma once
// What the office did for lines: the switch built, the jumper run, cut over, released. For one or
// many orders at a time, all or none, each an event of its own.

#include "app/actions/Records.h"
#include "core/order/JobFacts.h"

namespace loopwright {

struct DeskWork
{
    QStringList orders;
    DeskFact fact;
    Moment at;
};
/// Ids of the facts, one for each order. Refused, naming each with its reason, if one is not open;
/// NotFound, BadInput as recordFacts(). Nothing is recorded then.
Result<QStringList> recordDeskWork(Records &records, const DeskWork &work);
/// They no longer count, all or none. Refused if one is void already.
Result<void> voidDeskWork(Records &records, const QStringList &facts, const QString &because);

/// The open orders that are released together with these: which one of them names, or which name
/// one, and so on. None of these is among them.
Result<QStringList> relatedOrders(Records &records, const QStringList &orders);

} // namespace loopwright
