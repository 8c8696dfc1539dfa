#include "core/errortest/PatternPhase.h"

#include <algorithm>

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
        const_cast<Entry &>(lookUp(bits)) = {bits, phase};
}

const PatternPhase::Entry &PatternPhase::lookUp(quint32 bits) const
{
    const std::size_t mask = m_baby.size() - 1;
    std::size_t at = (bits * 2654435761u >> 7) & mask;
    while (m_baby[at].bits != 0 && m_baby[at].bits != bits)
        at = (at + 1) & mask;
    return m_baby[at];
}

quint32 PatternPhase::phaseOf(quint32 bits) const
{
    // Going on by giant steps arrives among the baby steps after at most one round.
    const Matrix &giant = m_powers[std::size_t(m_babyLog)];
    const quint32 giantSteps = (period() >> m_babyLog) + 1;
    for (quint32 step = 0; step <= giantSteps; ++step, bits = apply(giant, bits)) {
        const Entry &entry = lookUp(bits);
        if (entry.bits != 0) {
            const qint64 gone = qint64(step) << m_babyLog;
            return quint32(((qint64(entry.phase) - gone) % period() + period()) % period());
        }
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
    // A zero followed by 14 zeros: the first 15 bits are zero, the last n - 15 are not all zero.
    const quint32 rest = 1u << (m_pattern.stages - 15);
    for (quint32 bits = 1; bits < rest; ++bits)
        m_suppressed.push_back(phaseOf(bits));
    std::sort(m_suppressed.begin(), m_suppressed.end());
}

} // namespace loopwright
