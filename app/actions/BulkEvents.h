#pragma once
// How the history tells of a change of all lines of an office: one event of the register for the
// change as a whole, after one for each order, in the chain of its circuit; the same when it is
// taken back.

#include "core/history/Event.h"
#include "core/order/ServiceOrder.h"

#include <QSet>

namespace loopwright::bulk {

inline const QString changed = QStringLiteral("bulk_changed");
inline const QString undone = QStringLiteral("bulk_undone");

/// Which of these changes an event belongs to; empty if to none.
inline QString idOf(const Event &event)
{
    const bool is = event.kind == changed || event.kind == undone;
    return is ? event.detail.value("bulk").toString() : QString();
}

inline QSet<QString> takenBackIn(const std::vector<Event> &events)
{
    QSet<QString> ids;
    for (const Event &event : events)
        if (event.kind == undone)
            ids.insert(idOf(event));
    return ids;
}

/// The columns that an event changed, with what they held before.
inline OrderFields columnsBefore(const Event &event)
{
    OrderFields columns;
    const QJsonObject said = event.detail.value("changes").toObject();
    for (auto column = said.begin(); column != said.end(); ++column)
        columns.insert(column.key(), column->toArray().at(0).toString());
    return columns;
}

} // namespace loopwright::bulk
