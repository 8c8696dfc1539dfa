#include "core/identifiers/SpellingTrouble.h"

namespace loopwright {

namespace {

constexpr qsizetype spreadsheetDigits = 15; // a double holds 15 decimal digits for certain

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

qsizetype digitsAt(QStringView text, qsizetype from)
{
    qsizetype end = from;
    while (end < text.size() && isDigit(text[end]))
        ++end;
    return end - from;
}

SpellingTrouble trouble(SpellingTroubleKind kind, const char *code, const Text &reason,
                        const QString &restored = {})
{
    return {kind, QString::fromLatin1(code), reason, restored};
}

// 2.17556E+13 and 2,17556E13. The digits are all there only if the exponent uses up the
// decimals.
std::optional<SpellingTrouble> scientific(QStringView text)
{
    const qsizetype whole = digitsAt(text, 0);
    const bool point = whole < text.size() && (text[whole] == u'.' || text[whole] == u',');
    const qsizetype decimals = point ? digitsAt(text, whole + 1) : 0;
    qsizetype at = whole + (point ? 1 + decimals : 0);
    if (whole == 0 || at >= text.size() || (text[at] != u'E' && text[at] != u'e'))
        return std::nullopt;
    ++at;
    if (at < text.size() && (text[at] == u'+' || text[at] == u'-'))
        ++at;
    const qsizetype exponentDigits = digitsAt(text, at);
    if (exponentDigits == 0 || exponentDigits > 3 || at + exponentDigits != text.size())
        return std::nullopt;
    const bool complete = point && text.sliced(at).toInt() == decimals && text[at - 1] != u'-';
    if (complete)
        return trouble(
            SpellingTroubleKind::Scientific, "scientific",
            QT_TRANSLATE_NOOP(
                "core", "A spreadsheet made a quantity of the number: format the column as text"),
            text.first(whole).toString() + text.sliced(whole + 1, decimals));
    return trouble(SpellingTroubleKind::Scientific, "scientific",
                   QT_TRANSLATE_NOOP(
                       "core",
                       "A spreadsheet made a quantity of the number and its last digits are lost: "
                       "take it from the provider's order"));
}

std::optional<SpellingTrouble> decimal(QStringView text)
{
    const qsizetype whole = digitsAt(text, 0);
    if (whole < 3 || whole >= text.size() || (text[whole] != u'.' && text[whole] != u','))
        return std::nullopt;
    const QStringView tail = text.sliced(whole + 1);
    if (tail != u"0" && tail != u"00")
        return std::nullopt;
    return trouble(
        SpellingTroubleKind::Decimal, "decimal",
        Text(QT_TRANSLATE_NOOP("core", "It ends in %1, which a spreadsheet adds: leave that out"))
            .arg(text.sliced(whole).toString()),
        text.first(whole).toString());
}

std::optional<SpellingTrouble> rounded(QStringView text)
{
    if (text.size() <= spreadsheetDigits || digitsAt(text, 0) != text.size())
        return std::nullopt;
    for (const QChar c : text.sliced(spreadsheetDigits))
        if (c != u'0')
            return std::nullopt;
    return trouble(
        SpellingTroubleKind::Rounded, "rounded",
        QT_TRANSLATE_NOOP(
            "core", "Nothing but 0 behind the 15th digit: a spreadsheet may have rounded it"));
}

} // namespace

std::optional<SpellingTrouble> spellingTroubleOf(QStringView typed)
{
    const QStringView text = typed.trimmed();
    if (text.startsWith(u'\'') || text.startsWith(u'\u2019')) {
        const QStringView rest = text.sliced(1);
        if (rest.isEmpty() || digitsAt(rest, 0) != rest.size())
            return std::nullopt;
        return trouble(
            SpellingTroubleKind::Apostrophe, "apostrophe",
            QT_TRANSLATE_NOOP(
                "core",
                "An apostrophe stands in front, a spreadsheet's mark of text: leave it out"),
            rest.toString());
    }
    for (const auto look : {scientific, decimal, rounded})
        if (auto found = look(text))
            return found;
    return std::nullopt;
}

} // namespace loopwright
