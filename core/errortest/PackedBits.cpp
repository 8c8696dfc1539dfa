#include "core/errortest/PackedBits.h"

#include <algorithm>

namespace loopwright {

PackedBits::PackedBits(const OctetView &view, OctetUse use)
{
    const int bits = use.bitsPerOctet();
    m_first = -qint64(view.countBefore) * bits;
    m_end = view.count * bits;
    m_words.assign(std::size_t(wordsBefore + (m_end + 63) / 64 + 1), 0);

    uchar before[octetsBefore] = {};
    std::copy(view.before, view.before + view.countBefore,
              before + octetsBefore - view.countBefore);
    if (use.seven) { // 112 bits, the last at position -1
        const quint64 upper = use.pack(loadWord(before)) >> 8;
        const quint64 lower = use.pack(loadWord(before + 8)) >> 8;
        m_words[1] = upper >> 8;
        m_words[2] = (upper << 56) | lower;
    } else {
        m_words[1] = use.pack(loadWord(before));
        m_words[2] = use.pack(loadWord(before + 8));
    }

    qint64 at = 0;
    const auto append = [&](quint64 packed) {
        quint64 *word = m_words.data() + wordsBefore + at / 64;
        word[0] |= packed >> (at % 64);
        if (at % 64 != 0)
            word[1] |= packed << (64 - at % 64);
        at += 8 * bits;
    };
    qint64 octet = 0;
    for (; octet + 8 <= view.count; octet += 8)
        append(use.pack(loadWord(view.octets + octet)));
    if (octet < view.count) {
        uchar rest[8] = {};
        std::copy(view.octets + octet, view.octets + view.count, rest);
        append(use.pack(loadWord(rest)));
    }
}

quint32 PackedBits::bits(qint64 at, int count) const
{
    const qint64 i = at >> 6;
    const int shift = int(at & 63);
    quint64 word = this->word(i) << shift;
    if (shift + count > 64)
        word |= this->word(i + 1) >> (64 - shift);
    return quint32(word >> (64 - count));
}

qint64 countOnes(const BitErrors &errors, qint64 from, qint64 to)
{
    if (from >= to)
        return 0;
    const qint64 firstWord = from >> 6;
    const qint64 lastWord = (to - 1) >> 6;
    qint64 count = 0;
    for (qint64 i = firstWord; i <= lastWord; ++i) {
        quint64 word = errors[std::size_t(i)];
        if (i == firstWord)
            word &= ~quint64(0) >> (from & 63);
        if (i == lastWord)
            word &= ~quint64(0) << (63 - ((to - 1) & 63));
        count += std::popcount(word);
    }
    return count;
}

} // namespace loopwright
