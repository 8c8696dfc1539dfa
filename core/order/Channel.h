#pragma once
// The channels of a basic-rate line: two bearer channels and the D channel. On an analog line B1
// stands for the line.

#include "core/base/EnumCodes.h"

namespace loopwright {

enum class Channel
{
    B1,
    B2,
    D,
};

template<>
struct EnumCodes<Channel>
{
    static constexpr std::pair<Channel, const char *> table[] = {
        {Channel::B1, "B1"}, {Channel::B2, "B2"}, {Channel::D, "D"}};
};

/// The words of the two bearer channels.
inline QStringList bearerChannels()
{
    return {toText(Channel::B1), toText(Channel::B2)};
}

} // namespace loopwright
