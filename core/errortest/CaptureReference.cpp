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
    const std::size_t rowLength = m_rowPeriod + std::size_t(m_words);
    m_table.resize(m_rows * rowLength);
    std::vector<quint64> packed(rowLength * bits / 64 + 2);
    for (quint32 row = 0; row < m_rows; ++row) {
        m_pattern.fill(row, packed.data(), qsizetype(packed.size()));
        for (std::size_t i = 0; i < rowLength; ++i) {
            const std::size_t at = i * bits;
            quint64 word = packed[at / 64] << (at % 64);
            if (at % 64 != 0)
                word |= packed[at / 64 + 1] >> (64 - at % 64);
            m_table[row * rowLength + i] = m_use.unpack(word) ^ m_complement;
        }
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
    const int wordsMade = (m_words * m_use.bitsPerWord() / 64 + stride) / stride * stride;
    m_made.resize(std::size_t(m_history + wordsMade));
    const quint32 period = m_pattern.period();
    const quint32 back = quint32(quint64(m_history) * 64 % period);
    m_pattern.fill((m_phase + period - back) % period, m_made.data(), m_history);
    if (!m_use.seven)
        for (int i = 0; i < m_history; ++i)
            m_made[std::size_t(i)] = m_use.unpack(m_made[std::size_t(i)]) ^ m_complement;
    m_historyInFront = true;
}

const quint64 *CaptureReference::makeWords()
{
    const int words = m_words * m_use.bitsPerWord() / 64;
    quint64 *made = m_made.data() + m_history;
    if (!m_historyInFront)
        std::copy(made + words - m_history, made + words, m_made.data());
    m_historyInFront = false;
    // Octets that carry seven bits are complemented when they are spread out.
    const quint64 complement = m_use.seven ? 0 : m_complement;
    for (int at = 0; at < words; at += stride) {
        quint64 next[stride];
        for (int i = 0; i < stride; ++i)
            next[i] = made[at + i - m_tapLag] ^ made[at + i - m_history] ^ complement;
        std::copy(next, next + stride, made + at);
    }
    return made;
}

const quint64 *CaptureReference::makeSevenBitWords()
{
    const quint64 *packed = makeWords();
    m_second.resize(std::size_t(m_words));
    for (int i = 0; i < m_words; ++i) {
        const int at = i * 56;
        quint64 word = packed[at / 64] << (at % 64);
        if (at % 64 > 8)
            word |= packed[at / 64 + 1] >> (64 - at % 64);
        m_second[std::size_t(i)] = m_use.unpack(word) ^ m_complement;
    }
    return m_second.data();
}

const quint64 *CaptureReference::withZerosSuppressed(const quint64 *words)
{
    if (words != m_second.data())
        m_second.assign(words, words + m_words);
    const quint32 period = m_pattern.period();
    const quint32 bits = quint32(m_use.bitsPerWord());
    for (const quint32 phase : m_pattern.suppressed()) {
        const quint32 at = (phase + period - m_phase) % period;
        if (at < bits * quint32(m_words))
            m_second[at / bits] ^= m_use.unpack(quint64(1) << (63 - at % bits));
    }
    return m_second.data();
}

const quint64 *CaptureReference::nextSecond()
{
    const quint64 *words = nullptr;
    if (m_tabled) {
        words = m_table.data() + m_row * (m_rowPeriod + std::size_t(m_words)) + m_column;
        m_column = (m_column + quint32(m_words)) % m_rowPeriod;
    } else {
        words = m_use.seven ? makeSevenBitWords() : makeWords();
        if (!m_pattern.suppressed().empty())
            words = withZerosSuppressed(words);
    }
    m_phase = (m_phase + m_phasesPerSecond) % m_pattern.period();
    return words;
}

} // namespace loopwright
