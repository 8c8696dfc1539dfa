#include "core/errortest/CaptureHunt.h"

#include <algorithm>
#include <cstring>
#include <utility>

namespace loopwright {

CaptureHunt::CaptureHunt(const PackedBits &bits, const Pattern &pattern, const HuntRange &range)
    : m_bits(bits)
    , m_pattern(pattern)
    , m_range(range)
{
    m_range.from = std::max(range.from, bits.first());
    m_range.to = std::min(range.to, bits.end());
    m_word = (m_range.from + pattern.stages) >> 6; // of the first sum
    m_lastWord = (m_range.to - 1) >> 6;
    if (m_range.from + pattern.stages + lockBits > m_range.to)
        m_word = m_lastWord + 1;
    skipToCandidate();
}

/// The sums of the 64 positions in the word pointed at.
quint64 CaptureHunt::syndrome(const quint64 *word) const
{
    const int k = m_pattern.tap;
    const int n = m_pattern.stages;
    return word[0] ^ (word[0] >> k | word[-1] << (64 - k)) ^ (word[0] >> n | word[-1] << (64 - n));
}

/// A stretch of 64 covers the whole of an aligned 32. If no such half fits there is no lock; the
/// stretch around the first that does begins in the word before at the earliest.
void CaptureHunt::skipToCandidate()
{
    constexpr int atOnce = 8; // words, for which the compiler uses wide registers
    for (qint64 word = m_word; word <= m_lastWord; word += atOnce) {
        quint64 sums[atOnce] = {};
        const qint64 count = std::min<qint64>(atOnce, m_lastWord + 1 - word);
        const quint64 *words = m_bits.from(word);
        if (count == atOnce)
            for (int i = 0; i < atOnce; ++i)
                sums[i] = syndrome(words + i);
        quint32 halves[2 * atOnce];
        std::memcpy(halves, sums, sizeof halves);
        quint32 fits = count < atOnce; // the last few may
        for (const quint32 half : halves)
            fits |= quint32(half == 0) | quint32(half == ~quint32(0));
        if (fits) {
            m_word = std::max(m_word, word - 1);
            return;
        }
    }
    m_word = m_lastWord + 1;
}

std::optional<Lock> CaptureHunt::lockAt(qint64 end, bool complement) const
{
    if (end > m_range.to)
        return std::nullopt;
    const int n = m_pattern.stages;
    const quint32 received = m_bits.bits(end - n, n);
    const quint32 state = complement ? received ^ m_pattern.period() : received;
    if (state == 0)
        return std::nullopt;
    return Lock{end, complement, state};
}

std::optional<Lock> CaptureHunt::step(Run &run, qint64 word, quint64 misfits, bool complement)
{
    const qint64 fitting = std::countl_zero(misfits); // 64 for none
    std::optional<Lock> lock;
    if (!run.told && run.length + fitting >= lockBits) {
        lock = lockAt(64 * word + lockBits - run.length, complement);
        run.told = true;
    }
    if (misfits == 0)
        run.length += 64;
    else
        run = {std::countr_zero(misfits), false};
    return lock;
}

std::optional<Lock> CaptureHunt::next()
{
    if (m_waiting)
        return std::exchange(m_waiting, std::nullopt);
    for (; m_word <= m_lastWord; ++m_word) {
        const quint64 sums = syndrome(m_bits.from(m_word));
        const int told = sums == 0 && m_runs[0].told ? 0 : ~sums == 0 && m_runs[1].told ? 1 : -1;
        if (told >= 0) { // a long stretch, such as a dead channel's, that was reported already
            m_runs[1 - told] = {};
            continue;
        }
        quint64 unknown = 0; // sums that reach back before the range fit nothing
        const qint64 firstSum = m_range.from + m_pattern.stages;
        if (firstSum > 64 * m_word)
            unknown = ~(~quint64(0) >> (firstSum - 64 * m_word));
        std::optional<Lock> found[2];
        for (int complement = 0; complement < 2; ++complement)
            if (m_range.complement.value_or(complement) == bool(complement))
                found[complement] = step(m_runs[complement], m_word,
                                         (complement ? ~sums : sums) | unknown, complement);
        if (found[0] && found[1] && found[1]->end < found[0]->end)
            std::swap(found[0], found[1]);
        if (found[0] || found[1]) {
            ++m_word;
            if (found[0])
                m_waiting = found[1];
            return found[0] ? found[0] : found[1];
        }
    }
    return std::nullopt;
}

} // namespace loopwright
