#pragma once
// What the board shows, as a table: every order that passes the filters, in the board's order.

#include "app/actions/Board.h"

namespace loopwright {

struct ViewExport
{
    BoardFilter filter;
    QString path; ///< `-`: standard output
    bool spreadsheet = false;
    Progress progress = {};
    int rowsAtOnce = 2000; ///< read in one go
};

/// RFC 4180, a row for each order with the fields of a board's row, read and written page by page.
/// The unpublished numbers are covered. Returns how many orders were written.
Result<qint64> exportView(Records &records, const ViewExport &what);

/// Names of its columns.
QStringList viewColumns();

} // namespace loopwright
