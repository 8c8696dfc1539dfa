#pragma once
// The board: every order with its stage and outcome, found by any number or name, filtered and
// counted.

#include "app/actions/Records.h"
#include "core/acceptance/BoardRow.h"

#include <QDate>
#include <QJsonObject>
#include <QMap>

#include <vector>

namespace loopwright {

enum class DueFilter
{
    Any,
    Late,
    Today,
    ThisWeek
};
template<>
struct EnumCodes<DueFilter>
{
    static constexpr std::pair<DueFilter, const char *> table[] = {
        {DueFilter::Late, "late"}, {DueFilter::Today, "today"}, {DueFilter::ThisWeek, "this_week"}};
};

struct BoardFilter
{
    std::optional<Stage> stage;
    std::optional<OrderOutcome> outcome;
    QString office, installer;      ///< empty: any
    DueFilter due = DueFilter::Any; ///< late: before today and not done
    QDate dueBefore;                ///< invalid: any; exclusive
    bool open = false;              ///< neither completed nor cancelled
    bool hazard = false;            ///< a hazard is open and the order is not done
    QString text;   ///< any part of a number or name; several words must all be found
    int limit = -1; ///< rows at most; -1: all
};

/// Those with an open hazard first, unless they are done; by due date, then number.
Result<std::vector<BoardRow>> boardRows(Records &records, const BoardFilter &filter);

/// Every order at the premises that was not cancelled, by due date, then number. None for no
/// premises.
Result<std::vector<BoardRow>> rowsAtPremises(Records &records, const QString &premises);

/// For each value of each filter, the number of rows that choosing it would show with the other
/// filters as they are.
struct BoardCounts
{
    QMap<Stage, int> stages;
    QMap<DueFilter, int> due;
    QMap<QString, int> offices, installers;
    int hazards = 0;
    int total = 0; ///< rows that the filter as it is shows
};
Result<BoardCounts> boardCounts(Records &records, const BoardFilter &filter);

} // namespace loopwright
