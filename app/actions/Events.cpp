#include "app/actions/Events.h"

#include "core/base/TextForm.h"

namespace loopwright {

namespace {

Event eventOf(const Records &records, const QString &subject, const QString &order,
              const QString &kind, const QJsonObject &detail)
{
    Event event;
    event.subject = subject;
    event.order = order;
    event.by = records.by();
    event.at = records.now();
    event.kind = kind;
    event.detail = detail;
    return event;
}

} // namespace

Event registerEvent(const Records &records, const QString &kind, const QJsonObject &detail)
{
    return eventOf(records, registerSubject(), {}, kind, detail);
}

Event orderEvent(const Records &records, const ServiceOrder &order, const QString &kind,
                 const QJsonObject &detail)
{
    return eventOf(records, circuitSubject(order.circuit), order.number, kind, detail);
}

Result<void> checkReason(const QString &because, const QString &needed, const QString &place)
{
    constexpr int longest = 2000; // as a fact takes it
    if (because.trimmed().isEmpty())
        return failure(ErrorCode::Usage, needed, place);
    if (const Text trouble = textTrouble(because, longest); !trouble.isEmpty())
        return failure(ErrorCode::Usage, trouble.english(), place);
    return {};
}

} // namespace loopwright
