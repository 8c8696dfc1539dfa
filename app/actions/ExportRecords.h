#pragma once
// All records as files: what the imports and `record` take, and beside it every table as it is
// stored. Of one moment, however long it takes.

#include "app/actions/Records.h"

#include <QStringList>

namespace loopwright {

struct RecordsExport
{
    QString folder;
    bool internal = false;    ///< with the unpublished numbers
    bool spreadsheet = false; ///< cells safe for one; then they are no longer what is stored
    Progress progress = {};
};

/// The paths of all that was written, the manifest last. In the order of taking them in:
///   offices.csv issuer.csv limits/ instruments.csv orders.csv records/ records_after/
///   installers.csv
/// repairs.csv holds the troubles, which an import takes once their circuit is in service;
/// instruments_as_labelled.csv what the office has not confirmed: instruments.csv lacks it, so that
/// nobody confirms it by importing that; records_voided/ the facts that count no longer, voids.csv
/// and exceptions.csv what no record holds. Orders that hold their identifiers stand first in
/// orders.csv: where two want the same, the right one gets it again.
Result<QStringList> exportRecords(Records &records, const RecordsExport &what);

} // namespace loopwright
