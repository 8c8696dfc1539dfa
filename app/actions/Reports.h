#pragma once
// Figures over all orders. What each report counts, and which columns it has, stands in one table
// (Reports.cpp); the command line, the desktop and the files that a report is written to read it.

#include "app/actions/Records.h"
#include "core/acceptance/ReportQuery.h"
#include "core/base/Text.h"
#include "db/ReportStore.h"

#include <QJsonObject>

#include <span>

namespace loopwright {

/// How a value is shown to a person; programs get it as it is.
enum class ReportForm
{
    Words,
    Day, ///< ISO, or a word where there is none
    Count,
    Share, ///< in percent
    Days,  ///< how many
    Yes    ///< true or false
};

/// Set to the left, as it is typed or named.
constexpr bool isText(ReportForm form)
{
    return form == ReportForm::Words || form == ReportForm::Day;
}

struct ReportColumn
{
    const char *key;  ///< of JSON and CSV
    const char *name; ///< for a person; translated as of "Reports"
    ReportForm form;
};

struct ReportDescription
{
    ReportKind kind;
    const char *name;                      ///< likewise
    const char *says;                      ///< one sentence: what is counted, and by which day
    ReportPer per;                         ///< unless another is asked for
    std::span<const ReportColumn> columns; ///< after the key
    std::span<const ReportColumn> behind;  ///< of the orders behind a figure, after what all have
    const char *drawn;                     ///< the column that the picture shows
};
std::span<const ReportDescription> allReports();
const ReportDescription &describe(ReportKind kind);

struct ReportRow
{
    QJsonObject values;     ///< "per" and the columns of the report
    ReportFigureKey behind; ///< what finds its orders
};

struct Report
{
    ReportQuery query;
    QDate made;
    std::vector<ReportRow> rows;
    Text sum; ///< one sentence over all rows

    const ReportDescription &what() const { return describe(query.kind); }
    /// "Acceptance on the first visit per office, 1 March 2026 to 31 March 2026"
    QString title() const;
    /// The key and the columns.
    std::vector<ReportColumn> columns() const;
};

/// Usage if the days are the wrong way round.
Result<Report> makeReport(Records &records, const ReportQuery &query);

/// Likewise; `limit` -1: all.
Result<std::vector<ReportOrder>> ordersBehind(Records &records, const ReportQuery &query,
                                              const ReportFigureKey &behind, int limit = -1);
/// The columns of such a list.
std::vector<ReportColumn> columnsBehind(ReportKind kind);
QJsonObject toJson(const ReportOrder &order, ReportKind kind);

/// A cell for a person; nothing for a key that is empty says "none".
QString cellText(const ReportColumn &column, const QJsonObject &values);

} // namespace loopwright
