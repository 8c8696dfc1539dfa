#pragma once
// Which loops of a serving office carry basic rate, and what would mend the others: every pair that
// an order holds, working or planned, with the newest make-up that was recorded of it.

#include "app/actions/Records.h"
#include "core/loop/Remedies.h"
#include "core/order/Services.h"

#include <functional>
#include <vector>

namespace loopwright {

struct OfficeLoop
{
    QString circuit, order, pair;
    LineKind kind = LineKind::Bri; ///< of the line; the loop is judged for basic rate in any case
    LoopQualification judged;
    std::vector<Remedy> mends; ///< best first
};

struct OfficeLoopCount
{
    qint64 suitable = 0, marginal = 0, notSuitable = 0;
    qint64 withoutMakeup = 0; ///< pairs of which nothing can be said

    qint64 loops() const { return suitable + marginal + notSuitable; }
    QJsonObject toJson() const;
};

/// Hands each loop to `take`, by pair, judged by the limits in force; the judging is done on all
/// cores. NotFound for an office that is not registered. A `take` that fails, or a progress that
/// says no (Refused), ends it.
Result<OfficeLoopCount> qualifyOffice(Records &records, const QString &office,
                                      const std::function<Result<void>(const OfficeLoop &)> &take,
                                      const Progress &progress = {});

/// The columns of one loop in a file: circuit_number, order_number, pair, kind, the figures of
/// `qualify loop`, and the best that would mend it.
QStringList officeLoopColumns();
QStringList officeLoopCells(const OfficeLoop &loop);

/// All loops as RFC 4180 at `path`; the file is there when it is whole. `spreadsheet`: no cell is
/// taken for a formula.
Result<OfficeLoopCount> writeOfficeLoops(Records &records, const QString &office,
                                         const QString &path, const Progress &progress = {},
                                         bool spreadsheet = false);
/// Likewise loops that were judged already, in their order.
Result<void> writeOfficeLoops(const std::vector<OfficeLoop> &loops, const QString &path,
                              bool spreadsheet = false);

} // namespace loopwright
