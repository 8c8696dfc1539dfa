#pragma once
// The calls that an order grants, one slot each: every service out on every channel that has it,
// every number called in for each of its services, a packet session where the D channel has one.

#include "app/actions/Orders.h"

namespace loopwright {

struct CallSlot
{
    Channel channel = Channel::B1; ///< for a call in: a channel that carries the service
    CallDirection direction = CallDirection::Out;
    Service service = Service::Voice;
    QString dn;    ///< called in; out: the line's first number
    QString dnKey; ///< the same however it is typed
    QString label; ///< "B1, data, out" or "217-555-0143, voice, in"

    /// "out.B1.data" or "in.1.voice", for object names and drafts.
    QString part;
    /// `keyOf`: tells numbers apart as the records do.
    bool isOf(const CallFact &call, const std::function<QString(const QString &)> &keyOf) const;
};

std::vector<CallSlot> callSlots(const ServiceOrder &order);
/// The key of a number, typed with or without separators and area code, on this order's line.
std::function<QString(const QString &)> numberKeys(const ServiceOrder &order);

} // namespace loopwright
