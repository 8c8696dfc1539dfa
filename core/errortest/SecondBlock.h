#pragma once
// Sixty-four seconds of a run at once: one bit for each, the first lowest. What G821 does with long
// lists it does block by block.

#include "core/errortest/Second.h"

namespace loopwright {

struct SecondBlock
{
    static constexpr int size = 64;
    using Mask = quint64;

    Mask errored = 0; ///< bit errors, or out of sync
    Mask severe = 0;  ///< severely errored, or out of sync
    Mask lost = 0;    ///< out of sync
    qint64 bitErrors = 0;
    qint32 worst = 0; ///< most bit errors in one of the seconds

    /// `severeFrom` bit errors make a second severely errored.
    static SecondBlock of(const Second *seconds, qint32 severeFrom);
    /// The same second by second, for processors without SSE2 and for comparison.
    static SecondBlock plainly(const Second *seconds, qint32 severeFrom);

    bool operator==(const SecondBlock &) const = default;
};

} // namespace loopwright
