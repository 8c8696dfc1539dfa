#pragma once
// Counts in words: "1 bit error", "2 bit errors".

#include "core/base/Text.h"

namespace loopwright {

enum class Counted
{
    Bit,
    Octet,
    Error,
    BitError,
    Second,
    Minute,
    ErroredSecond,
    SeverelyErroredSecond,
    UnavailableSecond,
    SevereOrUnavailableSecond,
    LossOfSync,
    Slip,
};

Text countText(qint64 count, Counted what);

} // namespace loopwright
