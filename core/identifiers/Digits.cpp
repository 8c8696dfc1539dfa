#include "core/identifiers/Digits.h"

namespace loopwright {

namespace {

constexpr char32_t noBreakSpace = 0x00A0;
constexpr char32_t enDash = 0x2013;

bool isSeparator(char32_t c)
{
    return c == U' ' || c == U'\t' || c == U'-' || c == U'.' || c == U'(' || c == U')' ||
           c == noBreakSpace || c == enDash;
}

bool isAsciiDigit(char32_t c)
{
    return c >= U'0' && c <= U'9';
}

// Letters that a typewriter and a tired eye use for digits. S, B, Z and the like stand for a digit
// now and then, these always.
std::optional<char> digitMeant(char32_t c)
{
    if (c == U'O' || c == U'o')
        return '0';
    if (c == U'l' || c == U'I')
        return '1';
    if (QChar::category(c) == QChar::Number_DecimalDigit)
        return char('0' + QChar::digitValue(c));
    return std::nullopt;
}

bool isInvisibleOrDash(char32_t c)
{
    switch (QChar::category(c)) {
    case QChar::Separator_Space:
    case QChar::Separator_Line:
    case QChar::Separator_Paragraph:
    case QChar::Punctuation_Dash:
    case QChar::Other_Format:
        return true;
    default:
        return c == U'\r' || c == U'\n' || c == 0x2212; // line ends, minus sign
    }
}

bool isApostrophe(char32_t c)
{
    return c == U'\'' || c == 0x2019;
}

} // namespace

DigitText stripSeparators(std::string_view utf8)
{
    DigitText text;
    const std::size_t size = utf8.size();
    for (std::size_t i = 0; i < size; ++i) {
        const char c = utf8[i];
        if (c >= '0' && c <= '9') {
            if (text.count < DigitText::capacity)
                text.kept[std::size_t(text.count)] = c;
            ++text.count;
        } else if (c == ' ' || c == '-' || c == '.' || c == '(' || c == ')' || c == '\t') {
        } else if (utf8.substr(i, 2) == "\xC2\xA0") {
            i += 1;
        } else if (utf8.substr(i, 3) == "\xE2\x80\x93") {
            i += 2;
        } else if (c == '+' && text.count == 0 && !text.plus) {
            text.plus = true;
        } else {
            text.onlyDigits = false;
        }
    }
    return text;
}

std::vector<OddCharacter> oddCharacters(QStringView typed)
{
    std::vector<OddCharacter> odd;
    const auto characters = typed.toUcs4();
    for (qsizetype i = 0; i < characters.size(); ++i) {
        const char32_t c = characters[i];
        if (isSeparator(c) || isAsciiDigit(c))
            continue;
        const bool droppable = isInvisibleOrDash(c) || (i == 0 && isApostrophe(c));
        odd.push_back({int(i) + 1, c, digitMeant(c), droppable});
    }
    return odd;
}

Text characterInWords(char32_t c)
{
    const QString hex = QString::number(uint(c), 16).toUpper().rightJustified(4, '0');
    if (!QChar::isPrint(c) || isInvisibleOrDash(c))
        return Text(QT_TRANSLATE_NOOP("core", "the unusual space or mark U+%1")).arg(hex);
    const QString shown = QString::fromUcs4(&c, 1);
    if (QChar::category(c) == QChar::Number_DecimalDigit)
        return Text(QT_TRANSLATE_NOOP("core", "%1, a digit of another script")).arg(shown);
    return Text(QChar::isLetter(c) ? QT_TRANSLATE_NOOP("core", "the letter %1")
                                   : QT_TRANSLATE_NOOP("core", "the character %1"))
        .arg(shown);
}

Text oddCharacterText(const OddCharacter &odd, const char *onlyDigits)
{
    const Text remedy =
        odd.meant ? Text(QT_TRANSLATE_NOOP("core", "type the digit %1"))
                        .arg(QString(QChar::fromLatin1(*odd.meant)))
                  : Text(odd.droppable ? QT_TRANSLATE_NOOP("core", "leave it out") : onlyDigits);
    return Text(QT_TRANSLATE_NOOP("core", "Character %1 is %2: %3"))
        .arg(odd.place)
        .arg(characterInWords(odd.character))
        .arg(remedy);
}

std::optional<std::string> respelt(QStringView typed)
{
    std::string digits;
    const auto odd = oddCharacters(typed);
    auto next = odd.begin();
    const auto characters = typed.toUcs4();
    for (qsizetype i = 0; i < characters.size(); ++i) {
        const char32_t c = characters[i];
        if (next != odd.end() && next->place == i + 1) {
            if (next->meant)
                digits.push_back(*next->meant);
            else if (!next->droppable)
                return std::nullopt;
            ++next;
        } else if (isAsciiDigit(c)) {
            digits.push_back(char(c));
        }
    }
    return digits;
}

std::string hyphenated(std::string_view digits)
{
    std::string text(digits);
    if (digits.size() == 10)
        text.insert(6, 1, '-').insert(3, 1, '-');
    else if (digits.size() == 7)
        text.insert(3, 1, '-');
    return text;
}

} // namespace loopwright
