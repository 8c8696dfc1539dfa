#pragma once
// Names for a person of what the records keep.

#include "app/desktop/widgets/SignLine.h"
#include "core/acceptance/Decision.h"
#include "core/order/Services.h"

#include <QDate>

namespace loopwright {

/// "Accepted", "Not accepted", …
QString outcomeName(OrderOutcome outcome);
Status outcomeSign(OrderOutcome outcome);
/// "open", "completed" or "cancelled", within a sentence.
QString statusName(OrderStatus status);
/// "basic rate", "analog", within a sentence.
QString kindName(LineKind kind);
/// Of an event: "order_taken" to "Order taken".
QString eventName(const QString &kind);

/// "12 Mar 2026"; "12 Mar" where it is a day of the year of `today`.
QString dayText(QDate day, QDate today = {});
/// "today", "tomorrow", "2 days late"; empty for any other day, or where it does not matter any
/// more.
QString dueWords(QDate due, QDate today, bool finished);

} // namespace loopwright
