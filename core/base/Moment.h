#pragma once
// A point in time as a record holds it: UTC to the millisecond, with the writer's offset beside it,
// so that "the day of the visit" is the installer's day. Text form: ISO 8601, e.g.
// 2026-03-04T09:15:00+01:00.

#include <QDate>
#include <QString>

#include <compare>
#include <optional>

namespace loopwright {

struct Moment
{
    qint64 msUtc = 0;      ///< milliseconds since 1970-01-01T00:00:00Z
    int offsetSeconds = 0; ///< writer's offset east of UTC, -14 h to +14 h

    /// Date, 'T', time to the minute or finer, and an offset ('Z' or +hh:mm) are all required;
    /// years 1970 to 2200.
    static std::optional<Moment> parse(QStringView text);

    QString text() const; ///< in the writer's offset; seconds always, milliseconds only if not zero
    QString utcText() const;    ///< the same instant, ending in Z
    QString storedText() const; ///< likewise, with milliseconds always, so that they sort as text
    QDate localDate() const;    ///< the writer's calendar day
    QString localClock() const; ///< "09:42", as the writer's clock showed it

    Moment plusSeconds(double seconds) const;
    double secondsUntil(const Moment &later) const;
    /// By more than a day: one of the two clocks is wrong.
    bool isAheadOf(const Moment &clock) const { return clock.secondsUntil(*this) > 86400; }

    /// Instants compare; the offset does not count.
    std::strong_ordering operator<=>(const Moment &other) const { return msUtc <=> other.msUtc; }
    bool operator==(const Moment &other) const { return msUtc == other.msUtc; }
};

} // namespace loopwright
