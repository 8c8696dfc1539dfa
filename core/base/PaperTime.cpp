#include "core/base/PaperTime.h"

#include <QLocale>
#include <QRegularExpression>

#include <cmath>

namespace loopwright {

namespace {

const QLocale &english()
{
    static const QLocale locale(QLocale::English);
    return locale;
}

QString zoneText(int offsetSeconds)
{
    const int minutes = std::abs(offsetSeconds) / 60;
    return QString("(UTC%1%2:%3)")
        .arg(QChar(offsetSeconds < 0 ? u'-' : u'+'))
        .arg(minutes / 60, 2, 10, QChar('0'))
        .arg(minutes % 60, 2, 10, QChar('0'));
}

} // namespace

QString paperDay(QDate day)
{
    return english().toString(day, "d MMMM yyyy");
}

QString paperDays(QDate from, QDate to)
{
    if (from == to || !from.isValid())
        return paperDay(to);
    return english().toString(from, from.year() == to.year() ? "d MMMM" : "d MMMM yyyy") + " to " +
           paperDay(to);
}

QString paperTime(const Moment &moment)
{
    return QString("%1, %2 %3")
        .arg(paperDay(moment.localDate()), moment.localClock(), zoneText(moment.offsetSeconds));
}

QString paperTimes(const Moment &from, const Moment &to)
{
    if (from.localDate() != to.localDate() || from.offsetSeconds != to.offsetSeconds)
        return paperTime(from) + " to " + paperTime(to);
    return QString("%1, %2 to %3 %4")
        .arg(paperDay(from.localDate()), from.localClock(), to.localClock(),
             zoneText(from.offsetSeconds));
}

QString paperCount(qint64 count)
{
    return english().toString(count);
}

QString groupedNumbers(QString text)
{
    static const QRegularExpression number("(?<![0-9.])[0-9]{5,15}(?![0-9])");
    for (auto match = number.match(text); match.hasMatch();
         match = number.match(text, match.capturedStart() + 1))
        text.replace(match.capturedStart(), match.capturedLength(),
                     paperCount(match.captured().toLongLong()));
    return text;
}

QString paperRatio(double ratio)
{
    if (!(ratio > 0) || ratio > 0.01)
        return QString::number(ratio);
    // Rounded down to two digits, so that no more is said than is so.
    const double one = 1 / ratio * (1 + 1e-9);
    const double unit = std::pow(10, std::floor(std::log10(one)) - 1);
    const double rounded = std::floor(one / unit) * unit;
    for (const auto &[size, word] : {std::pair(1e9, "billion"), std::pair(1e6, "million")})
        if (rounded >= size)
            return QString("1 in %1 %2").arg(QString::number(rounded / size, 'g', 3), word);
    return "1 in " + paperCount(qint64(rounded));
}

} // namespace loopwright
