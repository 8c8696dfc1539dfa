#pragma once
// Names for a person of the codes that the records keep. A code that has none is shown as it is.

#include "app/desktop/widgets/SignLine.h"
#include "core/order/Services.h"

#include <QDate>

namespace loopwright {

/// "identifiers" … "done" to "Identifiers" … "Done".
QString stageName(const QString &stage);
/// The stages in the order of the job.
QStringList stageKeys();
/// "not_accepted" to "Not accepted".
QString outcomeName(const QString &outcome);
Status outcomeSign(const QString &outcome);
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
