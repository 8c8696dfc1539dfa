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
    Prefix,   ///< anything
    NoDigit,  ///< no digit that touches them
    NoArea,   ///< no three digits with a mark between: they would be another area code
    NoNumber, ///< no digit, with or without a mark between
};

/// A text as it is searched: every digit of whatever script and width as 0 to 9, with where in the
/// text each character stood.
struct Folded
{
    QString text;
    std::vector<std::pair<qsizetype, qsizetype>> places; ///< begin and end in the original
};

char16_t digitMeant(QChar letter)
{
    switch (letter.unicode()) {
    case u'O':
    case u'o':
    case u'\u039F': // Greek
    case u'\u041E': // Cyrillic
        return u'0';
    case u'I':
    case u'l':
        return u'1';
    default:
        return 0;
    }
}

/// Which letters are read as digits.
enum class Letters
{
    None,
    InNumbers, ///< in a word that has a digit and else letters that look like one
    AllAlike,  ///< in a word of such letters alone too
};

/// Word by word, so that an ordinary word stays one.
void readLetters(Folded &folded, Letters letters)
{
    QString &text = folded.text;
    for (qsizetype i = 0; i < text.size();) {
        if (!text[i].isLetterOrNumber()) {
            ++i;
            continue;
        }
        qsizetype end = i;
        bool digit = false, alike = true;
        for (; end < text.size() && text[end].isLetterOrNumber(); ++end) {
            const bool isDigit = text[end] >= u'0' && text[end] <= u'9';
            digit |= isDigit;
            alike &= isDigit || digitMeant(text[end]) != 0;
        }
        if (alike && (digit || letters == Letters::AllAlike))
            for (qsizetype k = i; k < end; ++k)
                if (const char16_t meant = digitMeant(text[k]))
                    text[k] = QChar(meant);
        i = end;
    }
}

Folded fold(const QString &text, Letters letters)
{
    Folded folded;
    folded.text.reserve(text.size());
    folded.places.reserve(std::size_t(text.size()));
    for (qsizetype i = 0; i < text.size();) {
        if (text[i] < u'\x80') { // nearly all; it stands for itself
            folded.text += text[i];
            folded.places.emplace_back(i, i + 1);
            ++i;
            continue;
        }
        const qsizetype end = i + (text[i].isHighSurrogate() && i + 1 < text.size() ? 2 : 1);
        const QString one = text.mid(i, end - i);
        const char32_t code = one.toUcs4().value(0);
        // What is not seen does not part digits.
        if (QChar::category(code) != QChar::Other_Format)
            for (const QChar c : one.normalized(QString::NormalizationForm_KC)) {
                const int value = QChar::digitValue(c.isSurrogate() ? code : char32_t(c.unicode()));
                folded.text += value >= 0 ? QChar(char16_t(u'0' + value)) : c;
                folded.places.emplace_back(i, end);
            }
        i = end;
    }
    if (letters != Letters::None)
        readLetters(folded, letters);
    return folded;
}

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
    if (before == Before::NoArea)
        left += "(?<![0-9]{3}" + mark + ")(?<![0-9]{3}" + mark + "{2})";
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
        // With its country code, and as it is dialled within the country.
        if (digits.size() > withAreaCode && digits.startsWith('1')) {
            m_long << digitPattern(digits.last(withAreaCode), Before::Prefix);
            m_stored << digitPattern(digits.last(withAreaCode), Before::Prefix);
        }
        if (digits.size() >= longFrom)
            m_long << digitPattern(digits, Before::Prefix);
        else if (digits.size() >= shortest)
            m_short << digitPattern(digits, Before::NoDigit);
        if (digits.size() >= withAreaCode)
            m_long << digitPattern(digits.last(withoutAreaCode), Before::NoArea);
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

namespace {

QString coverMatches(const QString &text, const Folded &folded, const QRegularExpression &pattern)
{
    QString safe;
    qsizetype done = 0;
    auto matches = pattern.globalMatch(folded.text);
    while (matches.hasNext()) {
        const QRegularExpressionMatch match = matches.next();
        if (match.capturedLength() == 0)
            continue;
        const qsizetype from = folded.places[std::size_t(match.capturedStart())].first;
        const qsizetype to = folded.places[std::size_t(match.capturedEnd() - 1)].second;
        if (from < done)
            continue;
        safe += text.mid(done, from - done) + NumberGuard::covered();
        done = to;
    }
    return safe + text.mid(done);
}

QString coverAs(QString text, const QList<QRegularExpression> &patterns, Letters letters)
{
    if (patterns.isEmpty()) // an office without test lines: most texts of an export
        return text;
    Folded folded = fold(text, letters);
    for (const QRegularExpression &pattern : patterns) {
        if (!pattern.match(folded.text).hasMatch())
            continue;
        text = coverMatches(text, folded, pattern);
        folded = fold(text, letters);
    }
    return text;
}

} // namespace

QString NumberGuard::cover(const QString &text) const
{
    return coverAs(coverAs(text, m_long, Letters::None), m_long, Letters::AllAlike);
}

QString NumberGuard::coverTyped(const QString &text) const
{
    return coverAs(coverAs(cover(text), m_short, Letters::None), m_short, Letters::InNumbers);
}

QString NumberGuard::coverStored(const QString &text) const
{
    return coverAs(coverAs(text, m_stored, Letters::None), m_stored, Letters::InNumbers);
}

} // namespace loopwright
