#pragma once
// Where in its period a pattern is. The register's output is linear over GF(2): going on by any
// number of bits is a matrix, and the phase of given bits is a discrete logarithm, found by baby
// steps and giant steps (textbook algebra). "Plain" bits are the register's output before inversion
// and zero suppression.

#include "core/errortest/Pattern.h"

#include <array>
#include <vector>

namespace loopwright {

class PatternPhase
{
public:
    explicit PatternPhase(const Pattern &pattern);

    const Pattern &pattern() const { return m_pattern; }
    quint32 period() const { return m_pattern.period(); }

    /// The n plain bits from `phase` on, the first one most significant; phase 0 is n ones.
    quint32 bitsAt(quint32 phase) const;
    /// The phase at which these n plain bits stand; not all of them zero.
    quint32 phaseOf(quint32 bits) const;
    /// Plain bits from `phase` on, packed, 64 in a word, the first one most significant.
    void fill(quint32 phase, quint64 *words, qsizetype count) const;
    /// Phases at which zero suppression sends a one in place of a zero; empty for other patterns.
    const std::vector<quint32> &suppressed() const { return m_suppressed; }

private:
    static constexpr int maxStages = 23;
    using Matrix = std::array<quint32, maxStages>; ///< image of each single bit

    quint32 next(quint32 bits) const;
    static quint32 apply(const Matrix &matrix, quint32 bits);
    Matrix squared(const Matrix &matrix) const;
    void makeBabySteps();
    void findSuppressed();

    struct Entry
    {
        quint32 bits = 0; ///< 0: empty
        quint32 phase = 0;
    };
    std::size_t slotOf(quint32 bits) const;

    Pattern m_pattern;
    std::array<Matrix, maxStages> m_powers; ///< [j] goes on by 2^j bits
    int m_babyLog = 0;                      ///< 2^this baby steps
    std::vector<Entry> m_baby;              ///< hashed by the bits, open addressing
    /// Goes on by one giant step: image of each value of the lowest, middle and highest eight bits.
    std::array<std::array<quint32, 256>, 3> m_giant{};
    std::vector<quint32> m_suppressed;
};

} // namespace loopwright
