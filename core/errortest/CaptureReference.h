#pragma once
// The bits that ought to be in the octets, second by second, as they lie in memory. Short patterns
// come out of a table of all their words, longer ones are made as they are needed; memory depends
// on the pattern alone (2^15-1: 0.3 MB).

#include "core/errortest/OctetUse.h"
#include "core/errortest/PatternPhase.h"

#include <utility>
#include <vector>

namespace loopwright {

class CaptureReference
{
public:
    /// So many words follow those of a second: what comes next, but for suppressed zeros.
    static constexpr int wordsAhead = 8;

    /// `complement`: the plain bits are to be complemented. `words` of eight octets in a second, at
    /// least as many as the pattern has stages.
    CaptureReference(const PatternPhase &phase, OctetUse use, bool complement, int words);

    /// The next second begins at this phase.
    void seek(quint32 phase);
    /// Moves on by one second, whose words are returned, and wordsAhead after them; they stay
    /// valid until the next call.
    const quint64 *nextSecond();
    quint32 phase() const { return m_phase; } ///< of the next second's first bit

private:
    std::size_t rowLength() const { return m_rowPeriod + std::size_t(m_words + wordsAhead); }
    void makeTable();
    void makeSevenBitTable();
    void seekHistory();
    void fillHistory(quint32 phase, quint64 *words) const;
    void extend(quint64 *words, qint64 from, qint64 to) const;
    void makeWords();
    void spreadSevenBitWords();
    void suppressZeros(std::vector<quint64> &words, std::size_t from);

    const PatternPhase &m_pattern;
    OctetUse m_use;
    quint64 m_complement; ///< ones where a native word is to be complemented
    int m_words;
    quint32 m_phase = 0;
    quint32 m_phasesPerSecond;
    bool m_tabled;

    // Table: words at phases r, r + b, r + 2b, … (b bits in a word) in row r; there is more than
    // one row if b and the period have a divisor in common.
    std::vector<quint64> m_table;
    quint32 m_rows = 1;
    quint32 m_rowPeriod = 1;
    quint32 m_step = 1; ///< inverse of b / m_rows modulo m_rowPeriod
    quint32 m_row = 0;
    quint32 m_column = 0;

    // Recurrence: a history and after it the words of one second, native if an octet carries
    // eight bits, packed if it carries seven.
    int m_tapLag = 0; ///< in words
    int m_history = 0;
    bool m_historyInFront = false;
    std::vector<quint64> m_made;
    std::vector<quint64> m_spread; ///< the second if an octet carries seven bits
    /// Changed in the second that was handed out, and not to be built upon.
    std::vector<std::pair<quint64 *, quint64>> m_changed;
};

} // namespace loopwright
