#pragma once
// The events that the actions write, and the reasons that go into them.

#include "app/actions/Records.h"
#include "core/history/Event.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

/// Something was done by who acts, at the time that counts; of the register, or of an order.
Event registerEvent(const Records &records, const QString &kind, const QJsonObject &detail);
Event orderEvent(const Records &records, const ServiceOrder &order, const QString &kind,
                 const QJsonObject &detail);

/// Usage, at `place`, if a reason that somebody gives is empty (then `needed` says so) or is not
/// fit to be recorded.
Result<void> checkReason(const QString &because, const QString &needed,
                         const QString &place = QStringLiteral("because"));

} // namespace loopwright
