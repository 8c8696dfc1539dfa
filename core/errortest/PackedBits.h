#pragma once
// The pattern's bits of a second of a capture, taken out of their octets, with some bits before it
// and after it. Position 0 is the second's first bit; bits before it have negative positions.

#include "core/errortest/OctetUse.h"

#include <bit>
#include <vector>

namespace loopwright {

/// Octets around the beginning of a second.
struct OctetView
{
    const uchar *octets = nullptr; ///< of the second
    qint64 count = 0;              ///< from there on: the second and what follows, if it is known
    const uchar *before = nullptr; ///< the octets just before it
    int countBefore = 0;           ///< at most PackedBits::octetsBefore
};

class PackedBits
{
public:
    static constexpr int octetsBefore = 16;
    static constexpr qint64 wordsBefore = 3; ///< 128 bits, and one that is always 0

    PackedBits(const OctetView &view, OctetUse use);

    qint64 first() const { return m_first; } ///< 0 or below
    qint64 end() const { return m_end; }
    /// The word with positions 64 i to 64 i + 63; i from -wordsBefore. Bits outside first() and
    /// end() are 0.
    quint64 word(qint64 i) const { return m_words[std::size_t(i + wordsBefore)]; }
    /// The words from the ith on.
    const quint64 *from(qint64 i) const { return m_words.data() + i + wordsBefore; }
    bool bit(qint64 at) const { return (word(at >> 6) >> (63 - (at & 63))) & 1; }
    /// Up to 32 bits from `at` on, right-aligned.
    quint32 bits(qint64 at, int count) const;

private:
    std::vector<quint64> m_words;
    qint64 m_first = 0;
    qint64 m_end = 0;
};

/// One bit per position from 0 on: received differs from expected.
using BitErrors = std::vector<quint64>;

/// Ones in positions from `from` up to, and not with, `to`.
qint64 countOnes(const BitErrors &errors, qint64 from, qint64 to);
inline bool isError(const BitErrors &errors, qint64 at)
{
    return (errors[std::size_t(at >> 6)] >> (63 - (at & 63))) & 1;
}

} // namespace loopwright
