#pragma once
// Keys that the facts of the error test have in common.

#include "core/base/Json.h"
#include "core/order/Channel.h"

#include <QList>

namespace loopwright {

/// Every whole number up to here is exact in JSON (2^53 - 1); no count of a test set comes near.
inline constexpr qint64 maxCount = 9'007'199'254'740'991;

/// A list of B channels; fails where it is empty, names one twice, or holds anything else.
QList<Channel> readChannels(JsonReader &reader, const QString &key);
QJsonArray writeChannels(const QList<Channel> &channels);

template<class T>
void writeOptional(QJsonObject &object, const char *key, const std::optional<T> &value)
{
    if (value)
        object[QLatin1StringView(key)] = *value;
}

} // namespace loopwright
