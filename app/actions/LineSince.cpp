#include "app/actions/LineSince.h"

#include "core/certificate/LineChange.h"
#include "db/OrderStore.h"

#include <algorithm>

namespace loopwright {

Result<QString> lineSince(const Database &database, const ServiceOrder &then,
                          const std::vector<Event> &ofCircuit,
                          const std::function<bool(const Event &)> &isDone)
{
    const auto done = std::ranges::find_if(ofCircuit, [&](const Event &event) {
        return (isDone && isDone(event)) ||
               (event.kind == "order_completed" && event.order == then.number);
    });
    for (auto event = done; event != ofCircuit.end(); ++event) {
        if (event->kind != "order_completed" || event->order == then.number)
            continue;
        LOOPWRIGHT_ASSIGN(const auto later, OrderStore(database).get(event->order));
        if (later.order.type == OrderType::Repair)
            continue; // it changes nothing of the line
        if (later.order.type == OrderType::Disconnect)
            return QString("The circuit was disconnected by order %1.").arg(event->order);
        if (later.order.type == OrderType::Move)
            return QString("The line was moved by order %1.").arg(event->order);
        if (const QString change = lineChange(then, later.order); !change.isEmpty())
            return QString("Since then %1 by order %2.").arg(change, event->order);
    }
    return QString();
}

} // namespace loopwright
