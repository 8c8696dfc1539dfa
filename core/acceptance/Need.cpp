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
    for (const OrderedTerminal &terminal : order.terminals) {
        const QString own = terminal.dn.isEmpty() ? QString() : key(terminal.dn);
        if (!own.isEmpty() && !known.contains(own)) {
            known << own;
            numbers << terminal.dn;
        }
    }
    return numbers;
}

namespace {

/// Two numbers, of which one calls the other over both channels; empty if the line cannot.
QStringList numbersOfSelfCall(const ServiceOrder &order)
{
    const QStringList own = dataChannels(order).size() == 2 ? ownNumbers(order) : QStringList();
    return own.size() < 2 ? QStringList() : own.first(2);
}

} // namespace

bool mayCallItself(const ServiceOrder &order)
{
    return !numbersOfSelfCall(order).isEmpty();
}

QJsonObject testPreset(const ServiceOrder &order, Channel channel, std::optional<Path> path)
{
    const QStringList own = numbersOfSelfCall(order);
    const Path taken = path.value_or(own.isEmpty() ? Path::TestLine : Path::SelfCall);
    QJsonArray channels{toText(channel)};
    QJsonObject preset{{"path", toText(taken)}};
    if (taken == Path::SelfCall && !own.isEmpty()) {
        channels = {toText(Channel::B1), toText(Channel::B2)};
        preset.insert("from_dn", own[0]);
        preset.insert("to_dn", own[1]);
    }
    preset.insert("channels", channels);
    return preset;
}

} // namespace loopwright
