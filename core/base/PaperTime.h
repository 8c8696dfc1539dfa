#pragma once
// Days and times as papers say them: one form, the zone always with the time. Counts as papers say
// them: large ones grouped, ratios in words.

#include "core/base/Moment.h"

namespace loopwright {

/// "4 March 2026"
QString paperDay(QDate day);
/// "4 March 2026", "3 March to 4 March 2026".
QString paperDays(QDate from, QDate to);
/// "4 March 2026, 08:32 (UTC-06:00)"
QString paperTime(const Moment &moment);
/// "4 March 2026, 08:32 to 08:47 (UTC-06:00)"; over midnight or another zone both in full.
QString paperTimes(const Moment &from, const Moment &to);
/// "57,600,000"
QString paperCount(qint64 count);
/// A sentence with its large counts so grouped. Not for one with a telephone number in it.
QString groupedNumbers(QString text);
/// "1 in 10 million" for 1e-7; what is no small ratio with its digits.
QString paperRatio(double ratio);

} // namespace loopwright
