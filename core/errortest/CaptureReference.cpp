#include "core/errortest/CaptureReference.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace loopwright {

namespace {

constexpr int tableStages = 15; ///< up to 2^15-1 words, 256 KiB
constexpr int stride = 8;       ///< words made at a time; no more than the tap's lag

/// The x with a x = 1 modulo m, for a and m without a common divisor.
quint32 inverseModulo(quint32 a, quint32 m)
{
    qint64 x = 0;
    qint64 next = 1;
    qint64 r = m;
    qint64 rest = a % m;
    while (rest != 0) {
        const qint64 quotient = r / rest;
        x = std::exchange(next, x - quotient * next);
        r = std::exchange(rest, r - quotient * rest);
    }
    return quint32(x < 0 ? x + m : x);
}

/// The `index`th 56 of packed bits, left-aligned.
quint64 fiftySixBits(const quint64 *packed, qint64 index)
{
    const qint64 at = index * 56;
    quint64 word = packed[at / 64] << (at % 64);
    if (at % 64 > 8)
        word |= packed[at / 64 + 1] >> (64 - at % 64);
    return word;
}

} // namespace

CaptureReference::CaptureReference(const PatternPhase &phase, OctetUse use, bool complement,
                                   int words)
    : m_pattern(phase)
    , m_use(use)
    , m_complement(complement ? use.nativeMask() : 0)
    , m_words(words)
    , m_phasesPerSecond(quint32(qint64(words) * use.bitsPerWord() % phase.period()))
    , m_tabled(phase.pattern().stages <= tableStages)
{
    const Pattern &pattern = phase.pattern();
    // A recurrence holds at 2^j times its lags too (squaring in GF(2)); at 64 times and more it
    // works on whole words, and lags of a stride let several be made at once.
    int scale = 1;
    while (pattern.tap * scale < stride)
        scale *= 2;
    m_tapLag = pattern.tap * scale;
    m_history = pattern.stages * scale;
    if (m_tabled)
        makeTable();
    seek(0);
}

void CaptureReference::makeTable()
{
    const quint32 period = m_pattern.period();
    const quint32 bits = quint32(m_use.bitsPerWord());
    m_rows = std::gcd(bits, period);
    m_rowPeriod = period / m_rows;
    m_step = m_rowPeriod == 1 ? 0 : inverseModulo(bits / m_rows, m_rowPeriod);
    m_table.resize(m_rows * rowLength() + stride);
    if (m_use.seven) {
        makeSevenBitTable();
        return;
    }
    fillHistory(0, m_table.data());
    extend(m_table.data(), m_history, qint64(rowLength()));
}

void CaptureReference::makeSevenBitTable()
{
    std::vector<quint64> packed(rowLength() * 56 / 64 + 2);
    for (quint32 row = 0; row < m_rows; ++row) {
        m_pattern.fill(row, packed.data(), qsizetype(packed.size()));
        for (std::size_t i = 0; i < rowLength(); ++i)
            m_table[row * rowLength() + i] =
                m_use.unpack(fiftySixBits(packed.data(), qint64(i))) ^ m_complement;
    }
}

/// The first words from a phase on, as many as the recurrence reaches back.
void CaptureReference::fillHistory(quint32 phase, quint64 *words) const
{
    m_pattern.fill(phase, words, m_history);
    if (!m_use.seven)
        for (int i = 0; i < m_history; ++i)
            words[i] = m_use.unpack(words[i]) ^ m_complement;
}

/// Goes on with words[from] to words[to - 1], and up to a stride more, out of those before.
void CaptureReference::extend(quint64 *words, qint64 from, qint64 to) const
{
    // Octets that carry seven bits are complemented when they are spread out.
    const quint64 complement = m_use.seven ? 0 : m_complement;
    for (qint64 at = from; at < to; at += stride) {
        quint64 next[stride];
        for (int i = 0; i < stride; ++i)
            next[i] = words[at + i - m_tapLag] ^ words[at + i - m_history] ^ complement;
        std::copy(next, next + stride, words + at);
    }
}

void CaptureReference::seek(quint32 phase)
{
    m_phase = phase;
    if (m_tabled) {
        m_row = phase % m_rows;
        m_column = m_rowPeriod == 1 ? 0 : quint32(quint64(phase / m_rows) * m_step % m_rowPeriod);
        return;
    }
    seekHistory();
}

void CaptureReference::seekHistory()
{
    m_changed.clear();
    m_made.resize(
        std::size_t(m_history + (m_words + wordsAhead) * m_use.bitsPerWord() / 64 + stride));
    const quint32 period = m_pattern.period();
    const quint32 back = quint32(quint64(m_history) * 64 % period);
    fillHistory((m_phase + period - back) % period, m_made.data());
    m_historyInFront = true;
}

void CaptureReference::makeWords()
{
    for (const auto &[word, bits] : m_changed)
        *word ^= bits;
    m_changed.clear();
    const int words = m_words * m_use.bitsPerWord() / 64;
    if (!m_historyInFront)
        std::copy(m_made.begin() + words, m_made.begin() + words + m_history, m_made.begin());
    m_historyInFront = false;
    extend(m_made.data(), m_history, m_history + words + wordsAhead * m_use.bitsPerWord() / 64);
}

void CaptureReference::spreadSevenBitWords()
{
    m_spread.resize(std::size_t(m_words + wordsAhead));
    const quint64 *packed = m_made.data() + m_history;
    // Seven packed words make eight, always cut at the same places.
    for (int at = 0; at < m_words + wordsAhead; at += 8, packed += 7)
        for (int i = 0; i < 8; ++i)
            m_spread[std::size_t(at + i)] = m_use.unpack(fiftySixBits(packed, i)) ^ m_complement;
}

/// Sends ones where the pattern suppresses zeros; `words[from]` is the second's first.
void CaptureReference::suppressZeros(std::vector<quint64> &words, std::size_t from)
{
    const quint32 period = m_pattern.period();
    const quint32 bits = quint32(m_use.bitsPerWord());
    for (const quint32 phase : m_pattern.suppressed()) {
        const quint32 at = phase >= m_phase ? phase - m_phase : phase + period - m_phase;
        if (at >= bits * quint32(m_words))
            continue;
        m_changed.push_back(
            {&words[from + at / bits], m_use.unpack(quint64(1) << (63 - at % bits))});
        *m_changed.back().first ^= m_changed.back().second;
    }
}

const quint64 *CaptureReference::nextSecond()
{
    const quint64 *words = nullptr;
    if (m_tabled) {
        words = m_table.data() + m_row * rowLength() + m_column;
        m_column = (m_column + quint32(m_words)) % m_rowPeriod;
    } else {
        makeWords();
        if (m_use.seven)
            spreadSevenBitWords();
        std::vector<quint64> &second = m_use.seven ? m_spread : m_made;
        const std::size_t from = m_use.seven ? 0 : std::size_t(m_history);
        suppressZeros(second, from);
        words = second.data() + from;
    }
    m_phase = (m_phase + m_phasesPerSecond) % m_pattern.period();
    return words;
}

} // namespace loopwright
