#pragma once
// Names for a person of what the records keep.

#include "app/desktop/widgets/SignLine.h"
#include "core/acceptance/BoardRow.h"
#include "core/loop/RuleResult.h"
#include "core/office/Office.h"
#include "core/order/ServiceOrder.h"

#include <QDate>

namespace loopwright {

/// "Accepted", "Not accepted", …
QString outcomeName(OrderOutcome outcome);
Status outcomeSign(OrderOutcome outcome);
/// "Plant", "Power utility"; of a word of WaitingOn.
QString waitingOnName(const QString &word);
/// "open", "completed" or "cancelled", within a sentence.
QString statusName(OrderStatus status);
/// "basic rate", "analog", within a sentence.
QString kindName(LineKind kind);
/// Of a variant's key: "National ISDN-2"; the key itself where none has it.
QString variantName(const QString &key);
/// "NORTH — North Street"
QString officeName(const ServingOffice &office);
/// "suitable", "not suitable", within a sentence.
QString suitabilityName(Suitability verdict);
Status suitabilitySign(Suitability verdict);
/// The reasons of a prediction, which bear no full stop of their own, as sentences.
QString reasonSentences(const std::vector<Text> &reasons);
/// Of an event: "order_taken" to "Order taken".
QString eventName(const QString &kind);

/// Of a column of an order that is searched: "Contact", "DN 1".
QString searchedColumnName(const QString &column);
/// "Found in: Contact, DN 1."; empty where nothing is searched.
QString foundText(const QStringList &columns);

/// "12 Mar 2026"; "12 Mar" where it is a day of the year of `today`.
QString dayText(QDate day, QDate today = {});
/// "On hold, waits on plant: the drop wire is down. The first day was 2 Mar 2026; moved because:
/// snow."; empty if it neither waits nor was moved.
QString planText(const ServiceOrder &order);
/// "With van-7 since 10 Mar"; of several, a line each. Empty: no van has it.
QString outText(const std::vector<OutAt> &out, QDate today);
/// "2 things to settle between stations"; empty for none.
QString conflictsText(int conflicts);
/// Both, as far as there is anything to say.
QStringList stationLines(const std::vector<OutAt> &out, int conflicts, QDate today);
/// "Open for 3 days.", "Open since today."; empty for nothing.
QString hazardAge(std::optional<qint64> days);
/// "today", "tomorrow", "2 days late"; empty for any other day, or where it does not matter any
/// more.
QString dueWords(QDate due, QDate today, bool finished);

} // namespace loopwright
