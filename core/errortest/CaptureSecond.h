#pragma once
// A second of a capture looked at closely: it has places with many errors in a short time, or
// synchronisation comes back in it. Tells noise from slips and finds the bit at which a slip is.

#include "core/errortest/CaptureHunt.h"
#include "core/errortest/CaptureKernel.h"

#include <vector>

namespace loopwright {

/// Bits in error in a group of eight words from which the group is in trouble: far more than a line
/// that is fit for use ever has in 448 or 512 bits, far less than the half that a slip makes.
inline constexpr qint64 troubleFrom = 32;

struct SecondFindings
{
    qint64 bitErrors = 0;
    std::vector<qint64> slips; ///< in bits, in the order in which they were
    quint32 phase = 0;         ///< of position 0, as it is at the end
    bool troubledAtStart = false;
    bool troubledAtEnd = false; ///< the last group is in trouble and no slip explains it
    qint64 eighthBitErrors = 0; ///< of bitErrors those in the eighth bit of an octet
};

class CaptureSecond
{
public:
    /// `bits` hold the second's `secondBits` and, if known, some after it: a slip near the end
    /// of a second is seen in what follows.
    CaptureSecond(const PackedBits &bits, OctetUse use, const PatternPhase &pattern,
                  bool complement, qint64 secondBits);

    /// Compares from position `from` to the end of the second; `phase` belongs to position 0.
    SecondFindings compare(qint64 from, quint32 phase);

private:
    struct Jump
    {
        qint64 at = 0;      ///< first bit at the new phase
        qint64 lockEnd = 0; ///< where the new phase was beyond doubt
        quint32 phase = 0;  ///< of position 0
        BitErrors errors;
    };

    BitErrors errorsAt(quint32 phase) const;
    bool slipsIntoNext(qint64 group) const;
    qint64 endOfTrouble(qint64 group) const;
    std::optional<Jump> findJump(qint64 from, qint64 to) const;
    qint64 bestSplit(const BitErrors &after, qint64 from, qint64 to) const;
    void add(qint64 from, qint64 to);
    bool followJump(qint64 group);

    const PackedBits &m_bits;
    OctetUse m_use;
    const PatternPhase &m_pattern;
    bool m_complement;
    qint64 m_secondBits;
    qint64 m_groupBits;

    SecondFindings m_findings;
    BitErrors m_errors;    ///< at m_findings.phase
    qint64 m_from = 0;     ///< first bit of the stretch at this phase
    qint64 m_lastLock = 0; ///< later jumps end later
    qint64 m_at = 0;       ///< counted up to here
};

/// a - b as the smallest number modulo the period.
qint64 smallestDifference(quint32 a, quint32 b, quint32 period);

} // namespace loopwright
