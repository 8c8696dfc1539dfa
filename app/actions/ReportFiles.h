#pragma once
// A report as CSV, as a picture (SVG) and on paper (PDF).

#include "app/actions/Reports.h"
#include "app/print/BarPicture.h"
#include "app/print/Sheet.h"

namespace loopwright {

/// How long the bar of each row is, 0 to 1.
std::vector<double> drawnLengths(const Report &report);
/// One bar for each figure; of a list, for what its rows have in common.
BarPicture barsOf(const Report &report);
/// Values as they are, not rounded. `spreadsheet`: no text is taken for a formula.
QByteArray reportCsv(const Report &report, bool spreadsheet = false);
QByteArray ordersCsv(const std::vector<ReportOrder> &orders, ReportKind kind,
                     bool spreadsheet = false);
Sheet reportSheet(const Report &report, Paper paper);

/// "csv", "svg", "pdf": what a report can be written as.
QStringList reportFormats();
/// As the name ends, or in the format that is said. Usage for any other one. `spreadsheet` as
/// above.
Result<void> writeReport(Records &records, const Report &report, const QString &path,
                         const QString &format, Paper paper, bool spreadsheet = false);

} // namespace loopwright
