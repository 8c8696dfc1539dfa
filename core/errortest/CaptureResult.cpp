#include "core/errortest/CaptureResult.h"

#include <QJsonArray>

namespace loopwright {

namespace {

QJsonArray slipsJson(const std::vector<Slip> &slips)
{
    QJsonArray array;
    for (const Slip &slip : slips)
        array << QJsonObject{{"second", slip.second}, {"bits", slip.bits}};
    return array;
}

QJsonArray secondsJson(const SecondList &seconds)
{
    QJsonArray array;
    for (const Second second : seconds)
        array << (second.inSync() ? QJsonValue(second.bitErrors()) : QJsonValue());
    return array;
}

QJsonObject seenJson(const PatternSeen &seen)
{
    return {{"pattern", toText(seen.pattern)},
            {"inverted", seen.inverted},
            {"rate", seen.rate},
            {"bit_order", toText(seen.order)}};
}

QJsonValue octetsJson(const QByteArray &octets)
{
    return octets.isEmpty() ? QJsonValue()
                            : QJsonValue(QString::fromLatin1(octets.toHex(' ').toUpper()));
}

QJsonValue otherJson(const std::optional<PatternSeen> &other)
{
    return other ? QJsonValue(seenJson(*other)) : QJsonValue();
}

QJsonArray lossesJson(const std::vector<SyncLoss> &losses)
{
    QJsonArray array;
    for (const SyncLoss &loss : losses)
        array << QJsonObject{{"second", loss.second},
                             {"channel", toText(loss.channel)},
                             {"other", otherJson(loss.other)},
                             {"fixed_octets", octetsJson(loss.fixedOctets)}};
    return array;
}

QString seenText(const PatternSeen &seen)
{
    return QString("%1%2 at %3 bit/s%4")
        .arg(QLatin1StringView(patternOf(seen.pattern).name),
             QLatin1StringView(seen.inverted ? ", inverted," : ""))
        .arg(seen.rate)
        .arg(QLatin1StringView(seen.order == BitOrder::LsbFirst ? ", least significant bit first"
                                                                : ""));
}

/// What is neither the pattern nor another one that is known.
QString fixedText(ChannelState channel, const QByteArray &octets)
{
    if (channel != ChannelState::Dead)
        return QString("a fixed pattern: %1 over and over")
            .arg(QString::fromLatin1(octets.toHex(' ').toUpper()));
    return octets.isEmpty()
               ? QString("the channel is dead: nothing but stretches of ones and of zeros")
               : QString("the channel is dead: nothing but %1")
                     .arg(QLatin1StringView(octets.startsWith('\0') ? "zeros" : "ones"));
}

} // namespace

QJsonObject CaptureResult::toJson() const
{
    QJsonObject object = summary.toJson();
    object["channel"] = toText(channel);
    for (const char *key : {"pattern", "inverted", "rate", "bit_order"})
        object[QLatin1StringView(key)] = QJsonValue();
    if (found) {
        const QJsonObject seen = seenJson(*found);
        for (auto entry = seen.begin(); entry != seen.end(); ++entry)
            object[entry.key()] = entry.value();
    }
    object["other"] = otherJson(other);
    object["fixed_octets"] = octetsJson(fixedOctets);
    object["synchronised_at_bit"] =
        synchronisedAtBit ? QJsonValue(*synchronisedAtBit) : QJsonValue();
    object["slips"] = slipsJson(slips);
    object["losses"] = lossesJson(losses);
    object["per_second"] = secondsJson(seconds);
    return object;
}

QString CaptureResult::sentence() const
{
    switch (channel) {
    case ChannelState::Pattern:
        return QString("pattern %1").arg(seenText(*found));
    case ChannelState::EighthBitStuck:
        return QString("pattern %1; nearly all errors are in the eighth bit of the octets: the "
                       "path carries 56 kbit/s")
            .arg(seenText(*found));
    case ChannelState::OtherPattern:
        return QString("not the pattern asked for, but %1").arg(seenText(*other));
    case ChannelState::OtherRate:
        return QString("the pattern lies otherwise in the octets: %1").arg(seenText(*other));
    case ChannelState::Inverted: // only ever after a loss
    case ChannelState::Dead:
    case ChannelState::Fixed:
        return fixedText(channel, fixedOctets);
    case ChannelState::Unknown:
        return "no test pattern that is known here: another one, or no test signal at all";
    case ChannelState::Empty:
        return "the capture is empty";
    }
    Q_UNREACHABLE();
}

QString CaptureResult::lossSentence(const SyncLoss &loss) const
{
    const QString lost = QString("Synchronisation lost in second %1").arg(loss.second);
    switch (loss.channel) {
    case ChannelState::OtherPattern:
        return lost + ": then another pattern, " + seenText(*loss.other);
    case ChannelState::OtherRate:
        return lost + ": then the pattern lies otherwise in the octets, " + seenText(*loss.other);
    case ChannelState::Inverted:
        return lost + ": then the pattern is there with every bit inverted";
    case ChannelState::Dead:
    case ChannelState::Fixed:
        return lost + ": then " + fixedText(loss.channel, loss.fixedOctets);
    default:
        return lost;
    }
}

} // namespace loopwright
