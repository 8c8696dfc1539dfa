#pragma once
// Rows that the tables of the error test's facts have in common.

#include "core/base/FieldCodec.h"

namespace loopwright {

/// Every whole number up to here is exact in JSON (2^53 - 1); no count of a test set comes near.
inline constexpr qint64 maxCount = 9'007'199'254'740'991;

template<class T>
constexpr auto countField(const char *key, std::optional<qint64> T::*member, const char *unit = "")
{
    return bound(key, member, unit, 0, double(maxCount));
}

} // namespace loopwright
