#include "core/errortest/FactKeys.h"

namespace loopwright {

QList<Channel> readChannels(JsonReader &reader, const QString &key)
{
    QList<Channel> channels;
    const QJsonArray array = reader.array(key, 2);
    if (array.isEmpty())
        reader.fail(key, "must name at least one channel");
    for (int i = 0; i < int(array.size()); ++i) {
        const QString at = QString("%1[%2]").arg(key).arg(i);
        const auto channel = fromText<Channel>(array[i].toString());
        if (!channel || *channel == Channel::D)
            reader.fail(at, "must be B1 or B2");
        else if (channels.contains(*channel))
            reader.fail(at, QString("names %1 twice").arg(toText(*channel)));
        else
            channels << *channel;
    }
    return channels;
}

QJsonArray writeChannels(const QList<Channel> &channels)
{
    QJsonArray array;
    for (const Channel channel : channels)
        array << toText(channel);
    return array;
}

} // namespace loopwright
