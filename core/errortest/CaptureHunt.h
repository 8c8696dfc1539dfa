#pragma once
// Looks for a pattern in bits that need not begin at any particular phase: where 64 bits in a row
// each follow from the bits before them, the pattern is found (random bits: 2^-64 each time). The
// sum of three bits that the recurrence connects is 0 in the plain sequence and 1 in its
// complement, so that one pass finds both. A register of zeros follows from itself and is no
// pattern.

#include "core/errortest/PackedBits.h"
#include "core/errortest/PatternPhase.h"

#include <optional>

namespace loopwright {

/// Bits in a row that must fit.
inline constexpr int lockBits = 64;

struct Lock
{
    qint64 end = 0;          ///< position after the last of the bits that fitted
    bool complement = false; ///< of the plain bits
    quint32 state = 0;       ///< the n plain bits before `end`
};

struct HuntRange
{
    qint64 from = 0; ///< position of the first bit that may be used
    qint64 to = 0;   ///< a lock ends here or before
    /// Only this polarity; none: either.
    std::optional<bool> complement;
};

/// Walks over the locks in a range, the earliest end first, one for each stretch that fits.
class CaptureHunt
{
public:
    CaptureHunt(const PackedBits &bits, const Pattern &pattern, const HuntRange &range);

    std::optional<Lock> next();

private:
    struct Run
    {
        qint64 length = 0;
        bool told = false;
    };

    void skipToCandidate();
    quint64 syndrome(const quint64 *word) const;
    std::optional<Lock> step(Run &run, qint64 word, quint64 misfits, bool complement);
    std::optional<Lock> lockAt(qint64 end, bool complement) const;

    const PackedBits &m_bits;
    const Pattern &m_pattern;
    HuntRange m_range;
    qint64 m_word;
    qint64 m_lastWord;
    Run m_runs[2]; ///< plain, complement
    std::optional<Lock> m_waiting;
};

} // namespace loopwright
