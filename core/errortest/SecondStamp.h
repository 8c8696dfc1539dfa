#pragma once
// Which second a row of a test set's export belongs to: a counter, a time of the day, or a date
// with a time.

#include <QStringView>

#include <optional>

namespace loopwright {

struct SecondStamp
{
    enum class Kind
    {
        Counter, ///< seconds, with a fraction or not
        Clock,   ///< time of the day or elapsed time: 09:15:00, 9:15:00.5 PM, 14:59 (min:s)
        Date,    ///< date and time; an offset or Z is taken into account
    };
    Kind kind = Kind::Counter;
    qint64 milliseconds = 0; ///< since whatever the stamps of the file count from

    /// Dates as 2026-03-04, 2026/03/04, 03/04/2026 (month first), 04.03.2026 (day first).
    static std::optional<SecondStamp> parse(QStringView text);
};

} // namespace loopwright
