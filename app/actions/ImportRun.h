#pragma once
// The frame of every import: reads the file, walks its rows in one transaction, counts, keeps the
// rejects.

#include "app/actions/Import.h"
#include "core/base/Csv.h"
#include "core/history/Event.h"
#include "db/Transaction.h"

namespace loopwright {

/// What became of one row.
struct RowOutcome
{
    enum Kind
    {
        Accepted,
        Held,
        Refused,
        Unchanged
    } kind = Refused;
    Findings findings;
    std::vector<Event> events;

    static RowOutcome refused(const QString &code, const QString &column, const Text &reason)
    {
        return {Refused, {{Severity::Error, code, reason, {}, column, 0}}, {}};
    }
};

/// `take` gets each row that has the form of the header. Its failure ends the import and changes
/// nothing. `finish` runs after the last row in the same transaction if a row changed
/// something; it may add events and correct the report.
struct ImportRun
{
    Records &records;
    const ImportOptions &options;
    CsvLayout layout;
    std::function<Result<RowOutcome>(Transaction &, const CsvTable &, const CsvRow &)> take;
    std::function<Result<std::vector<Event>>(Transaction &, ImportReport &)> finish;

    Result<ImportReport> run(const QByteArray &csv) const;

private:
    /// True if a row changed something.
    Result<bool> walk(Transaction &transaction, const CsvTable &table, ImportReport &report) const;
};

} // namespace loopwright
