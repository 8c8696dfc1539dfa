#include "app/actions/ExportView.h"

#include "app/actions/ExportFolder.h"
#include "app/actions/LimitChanges.h"
#include "core/base/Csv.h"
#include "db/Connection.h"

#include <QHash>
#include <QJsonArray>

#include <limits>

namespace loopwright {

namespace {

constexpr qsizetype mostKnownTexts = 10'000;

/// Covers what somebody typed or dialled; most reasons are said of many orders.
class CoveredTexts
{
public:
    explicit CoveredTexts(NumberGuard guard)
        : m_guard(std::move(guard))
    {
    }
    QString of(const QString &text)
    {
        if (text.isEmpty())
            return text;
        if (const auto known = m_known.constFind(text); known != m_known.constEnd())
            return *known;
        if (m_known.size() >= mostKnownTexts)
            m_known.clear();
        return *m_known.insert(text, m_guard.coverStored(text));
    }

private:
    NumberGuard m_guard;
    QHash<QString, QString> m_known;
};

const QStringList typedColumns{"customer", "premises", "reason", "installer_name"};

/// The vans that have an order, and since when.
QString vansOf(const QJsonArray &out)
{
    QStringList vans;
    for (const QJsonValue &each : out)
        vans << each["station"].toString() + " since " + each["since"].toString();
    return vans.join("; ");
}

QString cellOf(const QJsonValue &value)
{
    if (value.isArray())
        return vansOf(value.toArray());
    if (value.isDouble())
        return QString::number(value.toInt());
    if (value.isBool())
        return value.toBool() ? QStringLiteral("true") : QStringLiteral("false");
    return value.toString();
}

QStringList cellsOf(const BoardRow &row, QDate today, CoveredTexts &covered, bool spreadsheet)
{
    const QJsonObject object = row.toJson(today);
    QStringList cells;
    const QStringList columns = viewColumns();
    for (const QString &column : columns) {
        QString cell = cellOf(object.value(column));
        if (typedColumns.contains(column))
            cell = covered.of(cell);
        cells << (spreadsheet ? spreadsheetSafe(cell) : cell);
    }
    return cells;
}

} // namespace

QStringList viewColumns()
{
    static const QStringList columns{"order_number", "circuit_number", "customer",
                                     "premises",     "pair",           "office",
                                     "kind",         "due_date",       "first_due_date",
                                     "late",         "date_missed",    "stage",
                                     "outcome",      "criterion",      "reason",
                                     "waiting_on",   "installer",      "installer_name",
                                     "hazard",       "hazard_at",      "paper_outstanding",
                                     "status",       "held",           "out",
                                     "conflicts"};
    return columns;
}

Result<qint64> exportView(Records &records, const ViewExport &what)
{
    LOOPWRIGHT_TRY(followLimits(records));
    LOOPWRIGHT_ASSIGN(auto file, OutFile::open(what.path, FileKind::Csv));
    LOOPWRIGHT_ASSIGN(auto guard, guardOfAllOffices(records));
    CoveredTexts covered(std::move(guard));
    const ReadSnapshot snapshot(records.database().connection()); // all pages of one moment
    LOOPWRIGHT_TRY(snapshot.result());
    const QDate today = records.now().localDate();
    LOOPWRIGHT_TRY(file.write(csvRecord(viewColumns())));
    BoardFilter page = what.filter;
    const qint64 most =
        what.filter.limit < 0 ? std::numeric_limits<qint64>::max() : what.filter.limit;
    qint64 written = 0;
    while (written < most) {
        page.limit = int(std::min<qint64>(what.rowsAtOnce, most - written));
        LOOPWRIGHT_ASSIGN(const auto rows, boardRows(records, page));
        for (const BoardRow &row : rows)
            LOOPWRIGHT_TRY(file.write(csvRecord(cellsOf(row, today, covered, what.spreadsheet))));
        written += qint64(rows.size());
        if (int(rows.size()) < page.limit)
            break;
        page.after = rows.back().order;
        if (what.progress && !what.progress(written, 0))
            return failure(ErrorCode::Refused, "The export was stopped; nothing was written.");
    }
    LOOPWRIGHT_TRY(file.commit());
    return written;
}

} // namespace loopwright
