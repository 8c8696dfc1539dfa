#include "core/errortest/PatternPhase.h"

#include <algorithm>
#include <bit>

namespace loopwright {

PatternPhase::PatternPhase(const Pattern &pattern)
    : m_pattern(pattern)
{
    for (int bit = 0; bit < m_pattern.stages; ++bit)
        m_powers[0][std::size_t(bit)] = next(1u << bit);
    for (std::size_t j = 1; j < m_powers.size(); ++j)
        m_powers[j] = squared(m_powers[j - 1]);
    makeBabySteps();
    if (m_pattern.zeroSuppressed)
        findSuppressed();
}

quint32 PatternPhase::next(quint32 bits) const
{
    // a(t+n) = a(t+n-k) xor a(t); a(t) is bit n-1, a(t+n-k) is bit k-1.
    const quint32 newest = ((bits >> (m_pattern.tap - 1)) ^ (bits >> (m_pattern.stages - 1))) & 1;
    return ((bits << 1) | newest) & m_pattern.period();
}

quint32 PatternPhase::apply(const Matrix &matrix, quint32 bits)
{
    quint32 image = 0;
    for (std::size_t bit = 0; bits != 0; ++bit, bits >>= 1)
        image ^= matrix[bit] & (0 - (bits & 1));
    return image;
}

PatternPhase::Matrix PatternPhase::squared(const Matrix &matrix) const
{
    Matrix square{};
    for (std::size_t bit = 0; bit < std::size_t(m_pattern.stages); ++bit)
        square[bit] = apply(matrix, matrix[bit]);
    return square;
}

quint32 PatternPhase::bitsAt(quint32 phase) const
{
    quint32 bits = period(); // n ones
    for (std::size_t j = 0; phase != 0; ++j, phase >>= 1)
        if (phase & 1)
            bits = apply(m_powers[j], bits);
    return bits;
}

void PatternPhase::makeBabySteps()
{
    m_babyLog = (m_pattern.stages + 1) / 2;
    m_baby.resize(std::size_t(4) << m_babyLog);
    quint32 bits = period();
    for (quint32 phase = 0; phase < (1u << m_babyLog); ++phase, bits = next(bits))
        m_baby[slotOf(bits)] = {bits, phase};
    const Matrix &giant = m_powers[std::size_t(m_babyLog)];
    for (std::size_t byte = 0; byte < m_giant.size(); ++byte)
        for (std::size_t value = 1; value < 256; ++value) {
            const quint32 rest = quint32(value & (value - 1));
            const std::size_t bit = 8 * byte + std::size_t(std::countr_zero(value));
            m_giant[byte][value] = m_giant[byte][rest] ^ (bit < giant.size() ? giant[bit] : 0);
        }
}

/// Where these bits stand among the baby steps, or the empty place where they would.
std::size_t PatternPhase::slotOf(quint32 bits) const
{
    const std::size_t mask = m_baby.size() - 1;
    std::size_t at = (bits * 2654435761u >> 7) & mask;
    while (m_baby[at].bits != 0 && m_baby[at].bits != bits)
        at = (at + 1) & mask;
    return at;
}

quint32 PatternPhase::phaseOf(quint32 bits) const
{
    // Going on by giant steps arrives among the baby steps after at most one round.
    const quint32 giantSteps = (period() >> m_babyLog) + 1;
    for (quint32 step = 0; step <= giantSteps; ++step) {
        const Entry &entry = m_baby[slotOf(bits)];
        if (entry.bits != 0) {
            const qint64 gone = qint64(step) << m_babyLog;
            return quint32(((qint64(entry.phase) - gone) % period() + period()) % period());
        }
        bits = m_giant[0][bits & 0xff] ^ m_giant[1][(bits >> 8) & 0xff] ^ m_giant[2][bits >> 16];
    }
    Q_UNREACHABLE();
}

void PatternPhase::fill(quint32 phase, quint64 *words, qsizetype count) const
{
    // 64 times the recurrence's lags hold too (squaring in GF(2)), so that from the n-th word on
    // whole words follow from whole words.
    const int n = m_pattern.stages;
    const int k = m_pattern.tap;
    quint32 bits = bitsAt(phase);
    for (qsizetype i = 0; i < std::min<qsizetype>(count, n); ++i) {
        quint64 word = 0;
        for (int bit = 0; bit < 64; ++bit, bits = next(bits))
            word = (word << 1) | ((bits >> (n - 1)) & 1);
        words[i] = word;
    }
    for (qsizetype i = n; i < count; ++i)
        words[i] = words[i - k] ^ words[i - n];
}

void PatternPhase::findSuppressed()
{
    // A zero followed by 14 zeros: the first 15 bits are zero, the rest is not.
    const quint32 rest = 1u << (m_pattern.stages - 15);
    std::vector<bool> known(rest);
    for (quint32 first = 1; first < rest; ++first) {
        quint32 phase = known[first] ? 0 : phaseOf(first);
        for (quint32 bits = first; bits < rest && !known[bits]; bits = next(bits)) {
            known[bits] = true;
            m_suppressed.push_back(phase);
            phase = (phase + 1) % period();
        }
    }
    std::sort(m_suppressed.begin(), m_suppressed.end());
}

} // namespace loopwright
