#pragma once
// The board: every order with its stage and outcome, found by any number or name, filtered and
// counted.

#include "app/actions/Records.h"
#include "core/acceptance/BoardQuery.h"
#include "core/acceptance/BoardRow.h"

#include <QDate>
#include <QMap>

#include <vector>

namespace loopwright {

enum class DueFilter
{
    Any,
    Late,
    AtRisk,
    Today,
    ThisWeek,
    Missed ///< its first date
};
template<>
struct EnumCodes<DueFilter>
{
    static constexpr std::pair<DueFilter, const char *> table[] = {
        {DueFilter::Late, "late"},
        {DueFilter::AtRisk, "at_risk"},
        {DueFilter::Today, "today"},
        {DueFilter::ThisWeek, "this_week"},
        {DueFilter::Missed, "missed"}};
};

struct BoardFilter : BoardQuery
{
    DueFilter due = DueFilter::Any; ///< late, at risk, missed: as of BoardRow
    QString after;                  ///< number of the last order of the page before
    qint64 place = 0;               ///< of the first row, if `after` is not given
    int limit = -1;                 ///< rows at most; -1: all
};

/// NotFound if the order of `after` is not there.
Result<std::vector<BoardRow>> boardRows(Records &records, const BoardFilter &filter);

/// Every order at the premises that was not cancelled, by due date, then number. None for no
/// premises.
Result<std::vector<BoardRow>> rowsAtPremises(Records &records, const QString &premises);

/// The open orders at the premises of these that are none of them; place by place, by due date.
Result<std::vector<BoardRow>> othersAtPremises(Records &records, const std::vector<BoardRow> &rows);

/// How many open orders each installer has on a day, by key; who has none is not there.
Result<QMap<QString, int>> loadOfDay(Records &records, QDate day);

/// For each value of each filter, the number of rows that choosing it would show with the other
/// filters as they are.
struct BoardCounts
{
    QMap<BoardFacet, QMap<QString, int>> facets; ///< a value that is not there counts 0
    QMap<DueFilter, int> due;
    QMap<QString, QString> installerNames; ///< of the registered keys
    int total = 0;                         ///< rows that the filter as it is shows
    /// There are more with the words of the search; these are of the newest with them.
    bool more = false;
    int all = 0; ///< orders in the records
};
Result<BoardCounts> boardCounts(Records &records, const BoardFilter &filter);

} // namespace loopwright
