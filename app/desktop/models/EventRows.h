#pragma once
// Events as the rows of a table: when, what, order, by whom, and what else the event says.

#include "app/desktop/models/TextTable.h"
#include "core/history/Event.h"
#include "core/office/Office.h"

namespace loopwright {

QStringList eventHeader();
std::vector<double> eventColumnEms();
/// Newest first.
std::vector<TextRow> eventRows(const std::vector<Event> &events, const QList<Person> &people);
/// "due_date: 2026-03-04, customer: …"; without the seals, which are for the machine.
QString eventDetail(const QJsonObject &detail);
/// "2026-03-04 09:15" on the writer's clock.
QString momentText(const Moment &moment);

} // namespace loopwright
