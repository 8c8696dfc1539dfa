#include "core/certificate/NumberGuard.h"

namespace loopwright {

namespace {

constexpr int shortest = 2;      ///< digits of a number that is looked for at all
constexpr int longFrom = 5;      ///< digits from which a number does not stand in a text by chance
constexpr int withAreaCode = 10; ///< digits of a North American number
constexpr int withoutAreaCode = 7;

QString digitsOf(const QString &number)
{
    QString digits;
    for (const QChar c : number)
        if (c >= u'0' && c <= u'9')
            digits += c;
    return digits;
}

/// What may stand before the digits.
enum class Before
{
    Prefix,  ///< anything
    NoDigit, ///< no digit that touches them
    NoNumber ///< no digit, with or without a mark between: it would be another area code
};

/// The digits one after the other, with what people write between them. A digit after them makes
/// it another number.
QRegularExpression digitPattern(const QString &digits, Before before)
{
    QStringList each;
    for (const QChar digit : digits)
        each << digit;
    const QString mark = QStringLiteral("[\\s\\x{A0}().,/\\x{2010}-\\x{2015}\\x{2212}_-]");
    QString left;
    if (before != Before::Prefix)
        left = "(?<![0-9])";
    if (before == Before::NoNumber)
        left += "(?<![0-9]" + mark + ")(?<![0-9]" + mark + "{2})";
    return QRegularExpression(left + each.join(mark + "{0,3}") + "(?![0-9])");
}

/// All of the value of one of a fact's keys that hold a number.
QRegularExpression dialledPattern(const QString &number)
{
    return QRegularExpression("(?<=dn\":\")" + QRegularExpression::escape(number) + "(?=\")");
}

QRegularExpression wordPattern(const QString &text)
{
    return QRegularExpression(QRegularExpression::escape(text),
                              QRegularExpression::CaseInsensitiveOption);
}

} // namespace

NumberGuard::NumberGuard(const QList<TestLine> &lines)
{
    for (const TestLine &line : lines) {
        const QString number = line.number.forInstallersOnly().trimmed();
        const QString digits = digitsOf(number);
        if (digits.size() >= longFrom)
            m_long << digitPattern(digits, Before::Prefix);
        else if (digits.size() >= shortest)
            m_short << digitPattern(digits, Before::NoDigit);
        if (digits.size() >= withAreaCode)
            m_long << digitPattern(digits.last(withoutAreaCode), Before::NoDigit);
        if (digits.size() >= longFrom)
            m_stored << digitPattern(digits, Before::Prefix);
        if (digits.size() >= withAreaCode)
            m_stored << digitPattern(digits.last(withoutAreaCode), Before::NoNumber);
        if (!number.isEmpty())
            m_stored << dialledPattern(number);
        const bool hasLetters =
            std::any_of(number.begin(), number.end(), [](QChar c) { return c.isLetter(); });
        if (hasLetters && number.size() >= longFrom)
            m_long << wordPattern(number), m_stored << wordPattern(number);
    }
}

QString NumberGuard::coverAll(QString text, const QList<QRegularExpression> &patterns)
{
    for (const QRegularExpression &pattern : patterns)
        text.replace(pattern, covered());
    return text;
}

} // namespace loopwright
