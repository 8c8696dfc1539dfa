#include "app/actions/ImportRun.h"

#include "app/actions/BoardRefresh.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int rowsBetweenReports = 200;

const QString importStopped = QStringLiteral("The import was stopped; nothing was changed.");

void keepReject(ImportReport &report, const CsvTable &table, const CsvRow &row,
                const Findings &findings)
{
    if (report.rejects.isEmpty())
        report.rejects = csvRecord(table.theirs + QStringList{"reason"});
    QStringList reasons;
    for (const Finding &finding : findings)
        if (finding.severity == Severity::Error)
            reasons << (finding.field.isEmpty()
                            ? finding.reason.english()
                            : QString(finding.field + ": " + finding.reason.english()));
    QStringList fields = row.fields;
    while (fields.size() < table.theirs.size())
        fields << QString();
    report.rejects += csvRecord(fields + QStringList{reasons.join("; ")});
}

void noLongerHeld(ImportReport &report, int row)
{
    --report.held;
    for (Finding &finding : report.findings)
        if (finding.row == row && finding.severity == Severity::Error) {
            finding.severity = Severity::Note;
            finding.reason += QT_TRANSLATE_NOOP("core", "A later row released it.");
        }
}

/// What went wrong after so many rows were kept.
Error brokenOff(Error error, int rows)
{
    error.rowsDone = rows;
    if (rows > 0 && error.message == importStopped)
        error.message = "The import was stopped.";
    else if (rows > 0)
        error.message.remove("; nothing was changed");
    return error;
}

Finding longChange()
{
    return {Severity::Warning,
            "long_change",
            QT_TRANSLATE_NOOP("core", "All rows go in as one change: until it is done nobody else "
                                      "can write."),
            {},
            {},
            0};
}

void count(ImportReport &report, RowOutcome::Kind kind)
{
    report.accepted += kind == RowOutcome::Accepted || kind == RowOutcome::Held;
    report.held += kind == RowOutcome::Held;
    report.refused += kind == RowOutcome::Refused;
    report.unchanged += kind == RowOutcome::Unchanged;
}

} // namespace

Result<std::vector<Event>> HeldRows::release(Records &records, Transaction &transaction,
                                             ImportReport &report) const
{
    std::vector<Event> events;
    LOOPWRIGHT_ASSIGN(const auto freed, claimForHeldOrders(records, transaction, events));
    for (const QString &order : freed)
        if (const auto line = m_lines.constFind(order); line != m_lines.end())
            noLongerHeld(report, *line);
    return events;
}

Result<bool> ImportRun::walk(Transaction &transaction, const CsvTable &table, Rows rows,
                             ImportReport &report) const
{
    bool changed = false;
    qint64 done = rows.data() - table.rows.data();
    for (const CsvRow &row : rows) {
        LOOPWRIGHT_ASSIGN(auto outcome, row.trouble.isEmpty()
                                            ? take(transaction, table, row)
                                            : Result<RowOutcome>(RowOutcome::refused(
                                                  "row_malformed", {},
                                                  Text(QT_TRANSLATE_NOOP("core", "The row %1."))
                                                      .arg(Text::message(row.trouble)))));
        for (Finding &finding : outcome.findings) {
            finding.row = row.line;
            finding.field = table.nameInFile(finding.field);
            report.findings.push_back(finding);
        }
        count(report, outcome.kind);
        if (outcome.kind == RowOutcome::Refused)
            keepReject(report, table, row, outcome.findings);
        for (const Event &event : outcome.events)
            LOOPWRIGHT_TRY(transaction.record(event));
        changed = changed || !outcome.events.empty();
        if (++done % rowsBetweenReports == 0 && options.progress &&
            !options.progress(done, qint64(table.rows.size())))
            return failure(ErrorCode::Refused, importStopped);
    }
    return changed;
}

Result<void> ImportRun::takePortion(const CsvTable &table, Rows rows, ImportReport &report) const
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const bool changed, walk(transaction, table, rows, report));
    if (options.allOrNothing && report.refused > 0) {
        report.refusedWhole = true;
        report.accepted = report.held = report.unchanged = 0;
        return {}; // the transaction rolls back
    }
    if (!changed)
        return {};
    LOOPWRIGHT_ASSIGN(const auto more, finish ? finish(transaction, report) : std::vector<Event>());
    return transaction.commit(more);
}

Result<void> ImportRun::takePortions(const CsvTable &table, ImportReport &report) const
{
    const Rows all(table.rows);
    const std::size_t most =
        records.isOnServer() && !options.allOrNothing ? rowsOfAPortion : all.size();
    if (records.isOnServer() && options.allOrNothing && all.size() > rowsOfAPortion)
        report.findings.push_back(longChange());
    for (std::size_t from = 0; from < all.size(); from += most) {
        const int kept = report.accepted;
        const auto taken =
            takePortion(table, all.subspan(from, std::min(most, all.size() - from)), report);
        if (!taken)
            return failure(brokenOff(taken.error(), kept));
    }
    return {};
}

Result<ImportReport> ImportRun::run(const QByteArray &csv) const
{
    CsvLayout allowed = layout;
    allowed.ignored = options.ignoredColumns;
    LOOPWRIGHT_ASSIGN(const auto table, readCsv(csv, options.fileName, allowed, options.map));
    ImportReport report;
    LOOPWRIGHT_TRY(takePortions(table, report));
    // What is in the records counts, not how fast they are asked the next time.
    if (report.accepted > 0)
        (void)records.database().keepStatistics();
    return report;
}

QJsonObject ImportReport::toJson() const
{
    return {{"accepted", accepted},
            {"held", held},
            {"refused", refused},
            {"unchanged", unchanged},
            {"refused_whole", refusedWhole},
            {"findings", findingsJson(findings)}};
}

} // namespace loopwright
