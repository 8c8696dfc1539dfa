#include "core/acceptance/Need.h"

#include "core/errortest/Pattern.h"
#include "core/order/OrderIdentifiers.h"

namespace loopwright {

QList<Channel> dataChannels(const ServiceOrder &order)
{
    QList<Channel> channels;
    if (order.kind == LineKind::Bri && order.b1.testFlag(Service::Data))
        channels << Channel::B1;
    if (order.kind == LineKind::Bri && order.b2.testFlag(Service::Data))
        channels << Channel::B2;
    return channels;
}

QStringList ownNumbers(const ServiceOrder &order)
{
    const NumberKey key(order);
    QStringList numbers, known;
    for (const OrderedTerminal &terminal : order.terminals)
        if (!terminal.dn.isEmpty() && !known.contains(key(terminal.dn))) {
            known << key(terminal.dn);
            numbers << terminal.dn;
        }
    return numbers;
}

bool mayCallItself(const ServiceOrder &order)
{
    return dataChannels(order).size() == 2 && ownNumbers(order).size() >= 2;
}

QJsonObject testPreset(const ServiceOrder &order, Channel channel, std::optional<Path> path)
{
    const Path taken = path.value_or(mayCallItself(order) ? Path::SelfCall : Path::TestLine);
    QJsonArray channels{toText(channel)};
    QJsonObject preset{{"path", toText(taken)}};
    if (taken == Path::SelfCall && mayCallItself(order)) {
        const QStringList own = ownNumbers(order);
        channels = {toText(Channel::B1), toText(Channel::B2)};
        preset.insert("from_dn", own[0]);
        preset.insert("to_dn", own[1]);
    }
    preset.insert("channels", channels);
    return preset;
}

} // namespace loopwright
