#pragma once
// What an installer has to do on a day: every open order that is due by then, with all that is
// needed to get there and to begin.

#include "app/actions/Records.h"
#include "app/print/WorkSheets.h"

namespace loopwright {

/// Open orders due on `day` or before it, by appointment and premises, then due date and number.
/// `installer`: a code; empty: of all, also of orders without an installer. `progress` counts
/// orders; Refused if it was stopped.
Result<std::vector<DayJob>> jobsOfDay(Records &records, const QString &installer, QDate day,
                                      const Progress &progress = {});

/// The same as a sheet, headed with the installer's name, and the orders on it. NotFound for a code
/// that is not in the register.
struct DaySheet
{
    Sheet sheet;
    QStringList orders;
};
Result<DaySheet> daySheet(Records &records, const QString &installer, QDate day, Paper paper,
                          const Progress &progress = {});

} // namespace loopwright
