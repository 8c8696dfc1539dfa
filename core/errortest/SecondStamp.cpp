#include "core/errortest/SecondStamp.h"

#include <QDateTime>
#include <QRegularExpression>

namespace loopwright {

namespace {

using Match = QRegularExpressionMatch;

constexpr int maxTextLength = 60;
constexpr qint64 dayMs = 86'400'000;

qint64 fractionMs(const QString &digits)
{
    return digits.left(3).leftJustified(3, '0').toLongLong();
}

std::optional<qint64> counterMs(const QString &text)
{
    static const QRegularExpression form(R"(\A(\d{1,12})(?:[.,](\d{1,9}))?\z)");
    const Match match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    return match.captured(1).toLongLong() * 1000 + fractionMs(match.captured(2));
}

/// Hours:minutes:seconds or minutes:seconds.
std::optional<qint64> clockMs(const QString &text)
{
    static const QRegularExpression form(
        R"(\A(?:(\d{1,3}):)?(\d{1,3}):(\d\d)(?:[.,](\d{1,9}))?(?:\s*([AaPp])[Mm])?\z)");
    const Match match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const bool withHours = !match.captured(1).isEmpty();
    qint64 hours = match.captured(1).toLongLong();
    const qint64 minutes = match.captured(2).toLongLong();
    const qint64 seconds = match.captured(3).toLongLong();
    const QString half = match.captured(5).toLower();
    if (seconds > 59 || (withHours && minutes > 59))
        return std::nullopt;
    if (!half.isEmpty()) {
        if (!withHours || hours < 1 || hours > 12)
            return std::nullopt;
        hours = hours % 12 + (half == "p" ? 12 : 0);
    }
    return ((hours * 60 + minutes) * 60 + seconds) * 1000 + fractionMs(match.captured(4));
}

QDate dateOf(const QString &text)
{
    static const std::pair<QRegularExpression, const char *> forms[] = {
        {QRegularExpression(R"(\A\d{4}-\d\d-\d\d\z)"), "yyyy-MM-dd"},
        {QRegularExpression(R"(\A\d{4}/\d\d/\d\d\z)"), "yyyy/MM/dd"},
        {QRegularExpression(R"(\A\d{1,2}/\d{1,2}/\d{4}\z)"), "M/d/yyyy"},
        {QRegularExpression(R"(\A\d{1,2}\.\d{1,2}\.\d{4}\z)"), "d.M.yyyy"},
    };
    for (const auto &[form, layout] : forms)
        if (form.match(text).hasMatch())
            return QDate::fromString(text, QString::fromLatin1(layout));
    return {};
}

std::optional<qint64> dateMs(const QString &text)
{
    static const QRegularExpression form(
        R"(\A([\d./-]{8,10})[T ]\s*([\d:.,]+(?:\s*[AaPp][Mm])?)\s*(?:(Z)|([+-])(\d\d):?(\d\d))?\z)");
    const Match match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const QDate date = dateOf(match.captured(1));
    const auto time = clockMs(match.captured(2));
    if (!date.isValid() || !time || *time >= dayMs)
        return std::nullopt;
    const qint64 offsetMinutes =
        match.captured(5).toLongLong() * 60 + match.captured(6).toLongLong();
    const qint64 offset = (match.captured(4) == "-" ? -60'000 : 60'000) * offsetMinutes;
    return (date.toJulianDay() - 2'440'588) * dayMs + *time - offset; // from 1970-01-01
}

} // namespace

std::optional<SecondStamp> SecondStamp::parse(QStringView view)
{
    if (view.size() > maxTextLength)
        return std::nullopt;
    const QString text = view.toString();
    if (const auto counter = counterMs(text))
        return SecondStamp{Kind::Counter, *counter};
    if (const auto clock = clockMs(text))
        return SecondStamp{Kind::Clock, *clock};
    if (const auto date = dateMs(text))
        return SecondStamp{Kind::Date, *date};
    return std::nullopt;
}

} // namespace loopwright
