#include "app/desktop/job/CallSlots.h"

namespace loopwright {

namespace {

QString firstNumber(const ServiceOrder &order)
{
    for (const OrderedTerminal &terminal : order.terminals)
        if (!terminal.dn.isEmpty())
            return terminal.dn;
    return {};
}

QString channelName(const ServiceOrder &order, Channel channel)
{
    return order.kind == LineKind::Analog ? QString("The line") : toText(channel);
}

} // namespace

bool CallSlot::isOf(const CallFact &call, const NumberKey &keyOf) const
{
    if (call.service != service)
        return false;
    if (service == Service::Packet)
        return call.channel == channel;
    if (call.direction != direction)
        return false;
    return direction == CallDirection::Out ? call.channel == channel
                                           : call.dn && keyOf(*call.dn) == dnKey;
}

std::vector<CallSlot> callSlots(const ServiceOrder &order)
{
    std::vector<CallSlot> list;
    const NumberKey keyOf(order);
    const std::pair<Channel, Services> channels[] = {
        {Channel::B1, order.b1}, {Channel::B2, order.b2}, {Channel::D, order.d}};
    for (const auto &[channel, services] : channels)
        for (const Service service : each(services))
            list.push_back(
                {channel,
                 CallDirection::Out,
                 service,
                 firstNumber(order),
                 {},
                 service == Service::Packet
                     ? QString("%1, packet session").arg(toText(channel))
                     : QString("%1, %2, out").arg(channelName(order, channel), toText(service)),
                 QString("out.%1.%2").arg(toText(channel), toText(service))});
    QStringList seen; // a number that several terminals share is called once
    for (const OrderedTerminal &terminal : order.terminals) {
        for (const Service service : each(order.servicesOf(terminal))) {
            const QString once = keyOf(terminal.dn) + ' ' + toText(service);
            if (terminal.dn.isEmpty() || service == Service::Packet || seen.contains(once))
                continue;
            seen << once;
            const Channel channel = order.b1.testFlag(service) ? Channel::B1 : Channel::B2;
            list.push_back({channel, CallDirection::In, service, terminal.dn, keyOf(terminal.dn),
                            QString("%1, %2, in").arg(keyOf.shown(terminal.dn), toText(service)),
                            QString("in.%1.%2").arg(terminal.number).arg(toText(service))});
        }
    }
    return list;
}

} // namespace loopwright
