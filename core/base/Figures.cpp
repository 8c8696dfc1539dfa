#include "core/base/Figures.h"

#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

bool isFigure(const QString &text)
{
    static const QRegularExpression word("(?<![A-Za-z])(?!(?:ohm|[kM]ohm|[kM]Hz|kbit|bit|dBrnC|"
                                         "SPIDs?|TEIs?|UTC)(?![A-Za-z]))[A-Za-z]{3}"
                                         "|\\b(?:at|by|in|of|on|or|to|up)\\b");
    return !word.match(text).hasMatch();
}

QString figureWith(QChar mark, const QString &english)
{
    // "-28.4 dB", "1.5e-07", "12,345", "(0.4 %)"; not "1.2.3", "T1.601", "26-0.1", "28.4:1".
    static const QRegularExpression number(
        "(?<![\\w.,:/#])(?<!\\w-)"
        "(?:[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d+)?|\\d+\\.\\d+(?:[eE][-+]?\\d+)?)"
        "(?!\\w|[-.,:/]\\w)");
    if (mark == englishMark || !isFigure(english))
        return english;
    QString text = english;
    for (auto it = number.globalMatch(english); it.hasNext();) {
        const auto match = it.next();
        for (qsizetype at = match.capturedStart(); at < match.capturedEnd(); ++at)
            if (english[at] == u',')
                text[at] = englishMark; // groups thousands
            else if (english[at] == englishMark)
                text[at] = mark;
    }
    return text;
}

bool holdsKey(const QString &source, int place)
{
    static const QRegularExpression marks("[\"“]$");
    static const QRegularExpression named("\\b(?:pair|cable|circuit|order|instrument|number|office|"
                                          "station|certificate|limit\\sset|key|"
                                          "SPID|DN|line|reference|serial)\\s$",
                                          QRegularExpression::CaseInsensitiveOption);
    const qsizetype at = source.indexOf(QStringLiteral("%%1").arg(place));
    const QString before = source.left(std::max<qsizetype>(at, 0));
    return marks.match(before).hasMatch() || named.match(before).hasMatch();
}

std::optional<std::pair<double, double>> twoReadings(const QString &typed, QChar mark)
{
    static const QRegularExpression thousands("^([-+]?[1-9]\\d{0,2})([.,])(\\d{3})$");
    const auto match = thousands.match(typed.trimmed());
    if (!match.hasMatch() || (mark == englishMark && match.captured(2) == englishMark))
        return {};
    const QString whole = match.captured(1), rest = match.captured(3);
    return std::pair(QString(whole + englishMark + rest).toDouble(),
                     QString(whole + rest).toDouble());
}

std::optional<double> typedNumber(const QString &typed, QChar mark)
{
    if (twoReadings(typed, mark))
        return {};
    bool ok = false;
    const double number = QString(typed).replace(u',', englishMark).toDouble(&ok);
    return ok ? std::optional(number) : std::nullopt;
}

QString asTyped(const QString &english, QChar mark)
{
    const QString text = QString(english).replace(englishMark, mark);
    return twoReadings(text, mark) ? text + u'0' : text;
}

} // namespace loopwright
