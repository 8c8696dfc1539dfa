#include "core/errortest/Pattern.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

constexpr Pattern table[] = {
    {PatternKey::Prbs9, "511", 9, 5, false, false, "O.150 (05/96) 5.1"},
    {PatternKey::Prbs11, "2047", 11, 9, false, false, "O.150 (05/96) 5.2"},
    {PatternKey::Prbs15, "2^15-1", 15, 14, true, false, "O.150 (05/96) 5.3"},
    {PatternKey::Prbs20, "2^20-1", 20, 3, false, false, "O.150 (05/96) 5.4"},
    {PatternKey::Qrss20, "2^20-1 QRSS", 20, 17, false, true, "O.150 (05/96) 5.5"},
    {PatternKey::Prbs23, "2^23-1", 23, 18, true, false, "O.150 (05/96) 5.6"},
};

} // namespace

std::span<const Pattern> patterns()
{
    return table;
}

const Pattern &patternOf(PatternKey key)
{
    for (const Pattern &pattern : table)
        if (pattern.key == key)
            return pattern;
    Q_UNREACHABLE();
}

bool isFixedPattern(const QString &name)
{
    static const QRegularExpression fixed(
        R"(^(all)?([01]s?|ones?|zero(e?s)?)$|^(mark|space)s?$|^alt|^fixed|^single|octet|)"
        R"(^[0-9]:[0-9]+$|^[0-9]+in[0-9]+$)");
    QString plain;
    for (const QChar letter : name.toLower())
        if (letter.isLetterOrNumber() || letter == u':')
            plain += letter;
    return fixed.match(plain).hasMatch();
}

PatternRegister::PatternRegister(const Pattern &pattern, quint32 q1ToQn)
    : m_pattern(pattern)
    , m_register(q1ToQn & pattern.period())
{
    Q_ASSERT(m_register != 0);
}

bool PatternRegister::next()
{
    // Qn is bit 0 and the next outputs are Qn-1, Qn-2, …, in bits 1, 2, …
    const quint32 out = m_register & 1;
    const bool nextFourteenZero = ((m_register >> 1) & 0x3fff) == 0;
    const quint32 feedback = ((m_register >> (m_pattern.stages - m_pattern.tap)) & 1) ^ out;
    m_register = (m_register >> 1) | (feedback << (m_pattern.stages - 1));
    return (out != 0) ^ m_pattern.inverted ||
           (m_pattern.zeroSuppressed && out == 0 && nextFourteenZero);
}

} // namespace loopwright
