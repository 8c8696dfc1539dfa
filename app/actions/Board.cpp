#include "app/actions/Board.h"

#include "app/actions/LimitChanges.h"
#include "db/BoardStore.h"

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
    BoardQuery query;
    query.stage = filter.stage;
    query.office = filter.office;
    query.installer = filter.installer;
    query.outcome = filter.outcome;
    query.text = filter.text;
    query.dueBefore = filter.dueBefore;
    query.open = filter.open;
    query.hazard = filter.hazard;
    const QDate monday = today.addDays(1 - today.dayOfWeek());
    switch (filter.due) {
    case DueFilter::Any:
        break;
    case DueFilter::Late:
        limitDue(query, {}, today);
        query.notDone = true;
        break;
    case DueFilter::Today:
        limitDue(query, today, today.addDays(1));
        break;
    case DueFilter::ThisWeek:
        limitDue(query, monday, monday.addDays(7));
        break;
    }
    return query;
}

Result<QMap<QString, int>> tally(const BoardStore &store, const BoardQuery &query,
                                 BoardStore::Tally of)
{
    LOOPWRIGHT_ASSIGN(const auto found, store.tally(query, of));
    QMap<QString, int> counts;
    for (auto it = found.begin(); it != found.end(); ++it)
        counts.insert(it.key(), int(it.value()));
    return counts;
}

} // namespace

Result<std::vector<BoardRow>> boardRows(Records &records, const BoardFilter &filter)
{
    LOOPWRIGHT_TRY(followLimits(records));
    return BoardStore(records.database())
        .lines(queryOf(filter, records.now().localDate()), filter.limit);
}

Result<std::vector<BoardRow>> rowsAtPremises(Records &records, const QString &premises)
{
    LOOPWRIGHT_TRY(followLimits(records));
    return BoardStore(records.database()).atPremises(premises);
}

Result<BoardCounts> boardCounts(Records &records, const BoardFilter &filter)
{
    LOOPWRIGHT_TRY(followLimits(records));
    const BoardStore store(records.database());
    const QDate today = records.now().localDate();
    const BoardQuery query = queryOf(filter, today);
    BoardCounts counts;
    LOOPWRIGHT_ASSIGN(const auto stages, tally(store, query, BoardStore::Tally::Stage));
    for (auto it = stages.begin(); it != stages.end(); ++it)
        if (const auto stage = fromText<Stage>(it.key()))
            counts.stages.insert(*stage, it.value());
    const std::pair<BoardStore::Tally, QMap<QString, int> *> tallies[] = {
        {BoardStore::Tally::Office, &counts.offices},
        {BoardStore::Tally::Installer, &counts.installers}};
    for (const auto &[of, into] : tallies) {
        LOOPWRIGHT_ASSIGN(auto found, tally(store, query, of));
        *into = std::move(found);
    }
    for (const auto &[due, code] : EnumCodes<DueFilter>::table) {
        BoardFilter other = filter;
        other.due = due;
        LOOPWRIGHT_ASSIGN(const auto found, store.count(queryOf(other, today)));
        counts.due.insert(due, int(found));
    }
    BoardQuery hazardous = query;
    hazardous.hazard = true;
    LOOPWRIGHT_ASSIGN(const auto hazards, store.count(hazardous));
    counts.hazards = int(hazards);
    LOOPWRIGHT_ASSIGN(const auto total, store.count(query));
    counts.total = int(total);
    return counts;
}

} // namespace loopwright
