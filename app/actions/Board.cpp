#include "app/actions/Board.h"

#include "app/actions/LimitChanges.h"
#include "app/actions/Register.h"
#include "core/order/Claims.h"
#include "db/BoardStore.h"
#include "db/SearchText.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

void limitDue(BoardQuery &query, QDate from, QDate before)
{
    if (from.isValid() && (!query.dueFrom.isValid() || from > query.dueFrom))
        query.dueFrom = from;
    if (before.isValid() && (!query.dueBefore.isValid() || before < query.dueBefore))
        query.dueBefore = before;
}

BoardQuery queryOf(const BoardFilter &filter, QDate today)
{
    BoardQuery query = filter;
    const QDate monday = mondayOf(today);
    switch (filter.due) {
    case DueFilter::Any:
        break;
    case DueFilter::Late:
        limitDue(query, {}, today);
        query.pending = true;
        break;
    case DueFilter::AtRisk:
        limitDue(query, today, workingDaysAfter(today, riskWorkingDays).addDays(1));
        query.pending = true;
        break;
    case DueFilter::Today:
        limitDue(query, today, today.addDays(1));
        break;
    case DueFilter::ThisWeek:
        limitDue(query, monday, monday.addDays(7));
        break;
    case DueFilter::Missed:
        query.missedBefore = today;
        break;
    }
    return query;
}

bool isDue(const BoardCombination &orders, DueFilter due)
{
    switch (due) {
    case DueFilter::Late:
        return orders.past && orders.pending;
    case DueFilter::AtRisk:
        return orders.soon && orders.pending;
    case DueFilter::Today:
        return orders.today;
    case DueFilter::ThisWeek:
        return orders.thisWeek;
    case DueFilter::Missed:
        return orders.missed;
    case DueFilter::Any:
        break;
    }
    return true;
}

/// The filters that the orders do not pass.
QList<BoardFacet> failedBy(const BoardCombination &orders, const BoardQuery &query)
{
    QList<BoardFacet> failed;
    for (auto it = query.facets.begin(); it != query.facets.end(); ++it)
        if (orders.values.value(it.key()) != it.value())
            failed << it.key();
    return failed;
}

/// Orders that pass all filters count everywhere; those that fail one alone are what another value
/// of it would show.
void countFacets(BoardCounts &counts, const BoardCombination &orders, const BoardQuery &query)
{
    const QList<BoardFacet> failed = failedBy(orders, query);
    if (failed.isEmpty())
        counts.total += int(orders.orders);
    if (failed.size() > 1)
        return;
    for (auto it = orders.values.begin(); it != orders.values.end(); ++it)
        if (failed.isEmpty() || failed.front() == it.key())
            counts.facets[it.key()][it.value()] += int(orders.orders);
}

/// What only says which orders are looked at: text and given days, and "open" where it is chosen,
/// because that filter is only on or off.
BoardQuery groundOf(const BoardQuery &query)
{
    BoardQuery ground = query;
    ground.facets.clear();
    if (const auto open = query.facets.constFind(BoardFacet::Open); open != query.facets.constEnd())
        ground.facets.insert(BoardFacet::Open, *open);
    return ground;
}

/// Under a search one walk over what it finds counts everything.
Result<void> countFound(BoardCounts &counts, const BoardStore &store, const BoardFilter &filter,
                        QDate today)
{
    LOOPWRIGHT_ASSIGN(const auto found, store.grouped(groundOf(filter), today));
    for (const BoardCombination &orders : found) {
        if (isDue(orders, filter.due))
            countFacets(counts, orders, filter);
        if (!failedBy(orders, filter).isEmpty())
            continue;
        for (const auto &[due, code] : EnumCodes<DueFilter>::table)
            if (isDue(orders, due))
                counts.due[due] += int(orders.orders);
    }
    return {};
}

/// Without one the tally has all but what depends on the day.
Result<void> countTallied(BoardCounts &counts, const BoardStore &store, const BoardFilter &filter,
                          QDate today)
{
    const BoardQuery query = queryOf(filter, today);
    LOOPWRIGHT_ASSIGN(const auto found,
                      query.isTallied() ? store.tallied() : store.grouped(groundOf(query), today));
    for (const BoardCombination &orders : found)
        countFacets(counts, orders, query);
    for (const auto &[due, code] : EnumCodes<DueFilter>::table) {
        BoardFilter other = filter;
        other.due = due;
        LOOPWRIGHT_ASSIGN(const auto orders, store.count(queryOf(other, today)));
        counts.due.insert(due, int(orders));
    }
    return {};
}

/// With those whom the text of the filter names.
BoardFilter withNames(BoardFilter filter, const QList<Person> &registered)
{
    filter.named = installersNamed(registered, filter.text);
    return filter;
}

} // namespace

Result<std::vector<BoardRow>> boardRows(Records &records, const BoardFilter &asked)
{
    LOOPWRIGHT_TRY(followLimits(records));
    const BoardStore store(records.database());
    const bool searches = !asked.text.trimmed().isEmpty();
    LOOPWRIGHT_ASSIGN(const auto registered,
                      searches ? people(records) : Result<QList<Person>>(QList<Person>()));
    const BoardFilter filter = withNames(asked, registered);
    const BoardQuery query = queryOf(filter, records.now().localDate());
    if (filter.after.isEmpty())
        return store.linesAt(query, filter.place, filter.limit);
    LOOPWRIGHT_ASSIGN(const auto last, store.row(filter.after));
    if (!last)
        return failure(ErrorCode::NotFound,
                       QString("There is no order \"%1\".").arg(filter.after.left(60)));
    return store.lines(query, filter.limit, &*last);
}

Result<std::vector<BoardRow>> rowsAtPremises(Records &records, const QString &premises)
{
    LOOPWRIGHT_TRY(followLimits(records));
    return BoardStore(records.database()).atPremises(premises);
}

Result<std::vector<BoardRow>> othersAtPremises(Records &records, const std::vector<BoardRow> &rows)
{
    QSet<QString> known, places;
    for (const BoardRow &row : rows)
        known.insert(row.order);
    std::vector<BoardRow> others;
    for (const BoardRow &row : rows) {
        const QString place = premisesKey(row.premises);
        if (places.contains(place))
            continue;
        places.insert(place);
        LOOPWRIGHT_ASSIGN(const auto there, rowsAtPremises(records, row.premises));
        for (const BoardRow &other : there)
            if (other.status == OrderStatus::Open && !known.contains(other.order))
                others.push_back(other);
    }
    return others;
}

Result<QMap<QString, int>> loadOfDay(Records &records, QDate day)
{
    return BoardStore(records.database()).loadOn(day);
}

Result<BoardCounts> boardCounts(Records &records, const BoardFilter &asked)
{
    LOOPWRIGHT_TRY(followLimits(records));
    LOOPWRIGHT_ASSIGN(const auto registered, people(records));
    const BoardFilter filter = withNames(asked, registered);
    const BoardStore store(records.database());
    const QDate today = records.now().localDate();
    BoardCounts counts;
    LOOPWRIGHT_TRY(filter.text.trimmed().isEmpty() ? countTallied(counts, store, filter, today)
                                                   : countFound(counts, store, filter, today));
    LOOPWRIGHT_ASSIGN(counts.more, store.findsMore(filter));
    for (const Person &person : registered)
        counts.installerNames.insert(person.key, person.name);
    LOOPWRIGHT_ASSIGN(const auto all, store.count({}));
    counts.all = int(all);
    return counts;
}

} // namespace loopwright
