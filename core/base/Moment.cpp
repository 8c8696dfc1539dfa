#include "core/base/Moment.h"

#include <QDateTime>
#include <QRegularExpression>
#include <QTimeZone>

#include <cmath>

namespace loopwright {

namespace {

QString isoText(const QDateTime &local)
{
    return local.toString(local.time().msec() == 0 ? "yyyy-MM-ddTHH:mm:ss"
                                                   : "yyyy-MM-ddTHH:mm:ss.zzz");
}

} // namespace

std::optional<Moment> Moment::parse(QStringView text)
{
    static const QRegularExpression pattern(
        R"(\A(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.(\d{1,3})\d*)?)?(?:Z|([+-])(\d\d):(\d\d))\z)");
    if (text.size() > 40)
        return std::nullopt;
    const auto match = pattern.match(text.toString());
    if (!match.hasMatch())
        return std::nullopt;
    const QDate date = QDate::fromString(match.captured(1), "yyyy-MM-dd");
    const QTime time(match.captured(2).toInt(), match.captured(3).toInt(),
                     match.captured(4).toInt(), match.captured(5).leftJustified(3, '0').toInt());
    const int offsetMinutes = match.captured(7).toInt() * 60 + match.captured(8).toInt();
    if (!date.isValid() || !time.isValid() || date.year() < 1970 || date.year() > 2200 ||
        match.captured(8).toInt() > 59 || offsetMinutes > 14 * 60)
        return std::nullopt;
    const int offset = (match.captured(6) == "-" ? -60 : 60) * offsetMinutes;
    const QDateTime moment(date, time, Qt::OffsetFromUTC, offset);
    return Moment{moment.toMSecsSinceEpoch(), offset};
}

QString Moment::text() const
{
    const QString local =
        isoText(QDateTime::fromMSecsSinceEpoch(msUtc, Qt::OffsetFromUTC, offsetSeconds));
    if (offsetSeconds == 0)
        return local + 'Z';
    const int minutes = std::abs(offsetSeconds) / 60;
    return local + QString("%1%2:%3")
                       .arg(offsetSeconds < 0 ? '-' : '+')
                       .arg(minutes / 60, 2, 10, QChar('0'))
                       .arg(minutes % 60, 2, 10, QChar('0'));
}

QString Moment::utcText() const
{
    return isoText(QDateTime::fromMSecsSinceEpoch(msUtc, Qt::UTC)) + 'Z';
}

QDate Moment::localDate() const
{
    return QDateTime::fromMSecsSinceEpoch(msUtc, Qt::OffsetFromUTC, offsetSeconds).date();
}

QString Moment::localClock() const
{
    return text().mid(11, 5);
}

QString Moment::storedText() const
{
    return QDateTime::fromMSecsSinceEpoch(msUtc, Qt::UTC).toString("yyyy-MM-ddTHH:mm:ss.zzz") + 'Z';
}

Moment Moment::plusSeconds(double seconds) const
{
    return Moment{msUtc + std::llround(seconds * 1000), offsetSeconds};
}

double Moment::secondsUntil(const Moment &later) const
{
    return double(later.msUtc - msUtc) / 1000.0;
}

} // namespace loopwright
