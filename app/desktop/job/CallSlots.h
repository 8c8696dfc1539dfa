#pragma once
// The calls that an order grants, one slot each: every service out on every channel that has it,
// every number called in for each of its services, a packet session where the D channel has one.

#include "app/actions/Orders.h"
#include "core/order/OrderIdentifiers.h"

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
    bool isOf(const CallFact &call, const NumberKey &keyOf) const;
};

std::vector<CallSlot> callSlots(const ServiceOrder &order);

} // namespace loopwright
