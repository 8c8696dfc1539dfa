#pragma once
// The frame of every import: reads the file, walks its rows in one transaction, counts, keeps the
// rejects. On a server, where others wait to write meanwhile, a long file goes in portions, each
// whole with its events.

#include "app/actions/Import.h"
#include "core/base/Csv.h"
#include "core/history/Event.h"
#include "db/Transaction.h"

#include <QHash>

#include <span>

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

/// The orders that rows of this file leave held. What a later row released, an earlier one may have
/// waited for: so they are asked again after the last.
class HeldRows
{
public:
    void note(const QString &order, int line) { m_lines.insert(order, line); }
    /// Claims for every held order that can have its identifiers now, with its event; a row that is
    /// held no longer is told as such.
    Result<std::vector<Event>> release(Records &records, Transaction &transaction,
                                       ImportReport &report) const;

private:
    QHash<QString, int> m_lines; ///< by order
};

/// `take` gets each row that has the form of the header. Its failure ends the import and changes
/// nothing, or nothing of its portion: then Error::rowsDone says how many rows are in, and the same
/// file again takes in the others. `finish` runs after the last row of each transaction if a row
/// changed something; it may add events and correct the report.
struct ImportRun
{
    static constexpr std::size_t rowsOfAPortion = 500;

    Records &records;
    const ImportOptions &options;
    CsvLayout layout;
    std::function<Result<RowOutcome>(Transaction &, const CsvTable &, const CsvRow &)> take;
    std::function<Result<std::vector<Event>>(Transaction &, ImportReport &)> finish;

    Result<ImportReport> run(const QByteArray &csv) const;

private:
    using Rows = std::span<const CsvRow>;
    /// True if a row changed something.
    Result<bool> walk(Transaction &transaction, const CsvTable &table, Rows rows,
                      ImportReport &report) const;
    Result<void> takePortion(const CsvTable &table, Rows rows, ImportReport &report) const;
    Result<void> takePortions(const CsvTable &table, ImportReport &report) const;
};

} // namespace loopwright
