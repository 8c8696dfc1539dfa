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

/// The digits one after the other, with what people write between them. A digit behind them makes
/// another number of it; one before them may be a prefix.
QRegularExpression digitPattern(const QString &digits, bool prefixAllowed)
{
    QStringList each;
    for (const QChar digit : digits)
        each << digit;
    const QString gap = QStringLiteral("[\\s\\x{A0}().,/\\x{2010}-\\x{2015}\\x{2212}_-]{0,3}");
    return QRegularExpression((prefixAllowed ? QString() : QString("(?<![0-9])")) + each.join(gap) +
                              "(?![0-9])");
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
            m_long << digitPattern(digits, true);
        else if (digits.size() >= shortest)
            m_short << digitPattern(digits, false);
        if (digits.size() >= withAreaCode)
            m_long << digitPattern(digits.last(withoutAreaCode), false);
        const bool hasLetters =
            std::any_of(number.begin(), number.end(), [](QChar c) { return c.isLetter(); });
        if (hasLetters && number.size() >= longFrom)
            m_long << wordPattern(number);
    }
}

QString NumberGuard::coverAll(QString text, const QList<QRegularExpression> &patterns)
{
    for (const QRegularExpression &pattern : patterns)
        text.replace(pattern, covered());
    return text;
}

} // namespace loopwright
