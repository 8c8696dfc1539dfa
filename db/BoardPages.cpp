// Pages of the board: the rows that a query has, in its order, after a row or from a place on.

#include "core/acceptance/Criteria.h"
#include "db/BoardStatement.h"
#include "db/BoardStore.h"
#include "db/PersonStore.h"
#include "db/SearchText.h"

#include <algorithm>
#include <limits>

namespace loopwright {

BoardRow readBoardRow(const Statement &row)
{
    BoardRow line;
    line.order = row.text("order_number");
    line.circuit = row.text("circuit_number");
    line.pair = row.text("pair");
    line.customer = row.text("customer");
    line.premises = row.text("premises");
    line.kind = row.word<LineKind>("kind");
    line.office = row.text("office");
    line.status = row.word<OrderStatus>("status");
    line.stage = row.word<Stage>("stage");
    line.outcome = row.word<OrderOutcome>("outcome");
    line.criterion = row.text("criterion");
    line.reason = row.text("reason");
    line.waitingOn = row.text("waiting_on");
    line.paper = row.boolean("paper");
    line.hazard = row.boolean("hazard");
    line.hazardAt = Moment::parse(row.text("hazard_at"));
    line.out = awayFromText(row.text("away_at"));
    line.conflicts = int(row.integer("conflicts"));
    line.installer = row.text("installer");
    line.installerName = row.text("installer_name");
    line.due = QDate::fromString(row.text("due_date"), Qt::ISODate);
    line.promised = QDate::fromString(row.text("promised_date"), Qt::ISODate);
    line.facts = int(row.integer("facts"));
    line.runs = int(row.integer("runs"));
    line.held = row.boolean("held");
    return line;
}

namespace {

/// Of the filters that a sort goes by.
QString valueOf(const BoardRow &row, BoardFacet facet)
{
    switch (facet) {
    case BoardFacet::Hazard:
        return row.hazard && row.stage != Stage::Done ? "1" : "0";
    case BoardFacet::Stage:
        return toText(row.stage);
    case BoardFacet::Outcome:
        return toText(row.outcome);
    case BoardFacet::Criterion:
        return row.criterion;
    case BoardFacet::WaitingOn:
        return row.waitingOn;
    default:
        return row.installer;
    }
}

/// The values of a filter in the order that a person expects; others follow by their letters, and
/// the empty one comes last.
Result<QStringList> inOrder(const Database &database, BoardFacet facet)
{
    QStringList values;
    switch (facet) {
    case BoardFacet::Hazard:
        return QStringList{"1", "0"};
    case BoardFacet::Stage:
        return allWords<Stage>();
    case BoardFacet::WaitingOn:
        return allWords<WaitingOn>();
    case BoardFacet::Outcome: // what must be looked at first
        for (const OrderOutcome outcome :
             {OrderOutcome::NotAccepted, OrderOutcome::Incomplete,
              OrderOutcome::AcceptedWithException, OrderOutcome::Accepted})
            values << toText(outcome);
        return values;
    case BoardFacet::Criterion:
        return criterionKeys();
    default:
        break;
    }
    LOOPWRIGHT_ASSIGN(auto people, PersonStore(database).all());
    std::ranges::stable_sort(people, {}, &Person::name);
    for (const Person &person : people)
        values << person.key;
    return values;
}

/// What stands in the place of a label's FROM; under a search the order's document is read too.
std::vector<std::string_view> partsFrom(const BoardQuery &query, std::string_view from)
{
    if (searchTerms(query.text).isEmpty())
        return {from, "board.with_order"};
    return {"board.and_content", from, "board.with_order"};
}

Result<std::vector<BoardRow>> linesIn(Statement &statement, const BoardQuery &query)
{
    if (searchTerms(query.text).isEmpty())
        return rows(statement, readBoardRow);
    return rows(statement, [&query](const Statement &row) {
        BoardRow line = readBoardRow(row);
        line.foundIn = columnsWith(row.json("content"), line.installerName, query.text);
        return line;
    });
}

/// A search without a limit is for all that it finds.
BoardStatement statementFor(const BoardQuery &query, TextBy how, int limit)
{
    BoardStatement statement(query, how);
    if (limit < 0)
        statement.findAll();
    return statement;
}

} // namespace

Result<std::vector<BoardRow>> BoardStore::lines(const BoardQuery &query, int limit,
                                                const BoardRow *after) const
{
    const BoardSortRow &sort = boardSortRow(query.sort);
    if (sort.valueByValue)
        return valueByValue(query, sort, limit, after);
    return linesOf(query, sort.parts, limit, after);
}

Result<std::vector<BoardRow>> BoardStore::valueByValue(const BoardQuery &query,
                                                       const BoardSortRow &sort, int limit,
                                                       const BoardRow *after) const
{
    const BoardFacet facet = *sort.valueByValue;
    LOOPWRIGHT_ASSIGN(const QStringList values, valuesInOrder(query, sort, after));
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    LOOPWRIGHT_ASSIGN(const auto orders, boardTally(m_database, query));
    if (orders == 0)
        return std::vector<BoardRow>();
    if (how != TextBy::Nothing || (orders <= fewToSort && values.size() > 2))
        return foundByRank(query, how, sort, values, limit, after);
    std::vector<BoardRow> found;
    const qsizetype reached =
        after ? std::max<qsizetype>(values.indexOf(valueOf(*after, facet)), 0) : 0;
    for (qsizetype place = reached; place < values.size(); ++place) {
        const int left = limit < 0 ? limit : limit - int(found.size());
        if (left == 0)
            break;
        BoardQuery one = query;
        one.facets.insert(facet, values[place]);
        one.descending = false;
        LOOPWRIGHT_ASSIGN(auto lines,
                          linesOf(one, sort.parts, left, place == reached ? after : nullptr));
        found.insert(found.end(), std::make_move_iterator(lines.begin()),
                     std::make_move_iterator(lines.end()));
    }
    return found;
}

/// The values that orders under the filters have, along the sort; that of `after` too, whose order
/// may have changed since.
Result<QStringList> BoardStore::valuesInOrder(const BoardQuery &query, const BoardSortRow &sort,
                                              const BoardRow *after) const
{
    const BoardFacet facet = *sort.valueByValue;
    if (const auto chosen = query.facets.constFind(facet); chosen != query.facets.constEnd())
        return QStringList{*chosen};
    LOOPWRIGHT_ASSIGN(auto known, inOrder(m_database, facet));
    if (sort.values.empty()) {
        if (query.descending)
            std::ranges::reverse(known);
        return known;
    }
    const auto rank = [&known](const QString &value) {
        const qsizetype place = known.indexOf(value);
        return std::tuple(value.isEmpty(), place < 0, place, value);
    };
    const auto statement = tallyStatement(query).on(m_database, sort.values, {"board.from_tally"});
    LOOPWRIGHT_ASSIGN(const auto there,
                      rows(*statement, [](const Statement &row) { return row.text("value"); }));
    QStringList values(there.begin(), there.end());
    if (after)
        values << valueOf(*after, facet);
    values.removeDuplicates();
    std::ranges::sort(values, [&](const QString &a, const QString &b) {
        return query.descending ? rank(b) < rank(a) : rank(a) < rank(b);
    });
    return values;
}

/// One walk over what was found, or what is under the filters, however many values there are.
Result<std::vector<BoardRow>> BoardStore::foundByRank(const BoardQuery &query, TextBy how,
                                                      const BoardSortRow &sort,
                                                      const QStringList &values, int limit,
                                                      const BoardRow *after) const
{
    // All of them are sorted: the order of an index is of no use.
    LOOPWRIGHT_ASSIGN(const auto from, boardIndexFor(m_database, query, how, sort.parts, -1));
    if (from.empty())
        return std::vector<BoardRow>();
    BoardStatement composed = statementFor(query, how, limit);
    if (after)
        composed.add(sort.afterRank);
    composed.add(sort.byRank);
    const auto statement = composed.on(m_database, "board.lines", partsFrom(query, from));
    const QString ranks = '|' + values.join('|') + '|';
    statement->bind("ranks", ranks);
    if (after) {
        // Under a filter by it there is one value, which that order may no longer have.
        const qsizetype rank = ranks.indexOf('|' + valueOf(*after, *sort.valueByValue) + '|');
        statement->bind("after_rank", std::max<qsizetype>(rank, 0) + 1)
            .bind("after_due", after->due.toString(Qt::ISODate))
            .bind("after_number", after->order);
    }
    statement->bind("limit", limitOf(limit)).bind("offset", 0);
    return linesIn(*statement, query);
}

/// The order that stands at a place, from 0, of the rows by these keys.
Result<std::optional<BoardRow>> BoardStore::lineAt(const BoardQuery &query,
                                                   const BoardKeyParts &parts, qint64 place) const
{
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    BoardQuery walked = query;
    // What the tally counts is walked over from the nearer end.
    if (how == TextBy::Nothing && searchTerms(query.text).isEmpty() && query.isTallied()) {
        LOOPWRIGHT_ASSIGN(const auto all, boardTally(m_database, query));
        if (place > all / 2 && place < all) {
            place = all - 1 - place;
            walked.descending = !query.descending;
        }
    }
    const int read = int(std::min<qint64>(place + 1, std::numeric_limits<int>::max()));
    LOOPWRIGHT_ASSIGN(const auto from, boardIndexFor(m_database, walked, how, parts, read));
    if (from.empty())
        return std::optional<BoardRow>();
    const auto statement = BoardStatement(walked, how)
                               .add(walked.descending ? parts.byDown : parts.by)
                               .on(m_database, "board.number", {from});
    statement->bind("limit", 1).bind("offset", place);
    LOOPWRIGHT_ASSIGN(const auto number, firstRow(*statement, [](const Statement &row) {
                          return row.text("order_number");
                      }));
    return number ? row(*number) : std::optional<BoardRow>();
}

Result<std::vector<BoardRow>> BoardStore::linesAt(const BoardQuery &query, qint64 place,
                                                  int limit) const
{
    if (place <= 0)
        return lines(query, limit);
    const BoardSortRow &sort = boardSortRow(query.sort);
    BoardQuery walked = query;
    qint64 before = place - 1; // of the row that stands before them
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    if (sort.valueByValue && how != TextBy::Nothing) {
        LOOPWRIGHT_ASSIGN(auto found, lines(query, int(place) + limit));
        found.erase(found.begin(), found.begin() + std::min(place, qint64(found.size())));
        return found;
    }
    if (sort.valueByValue) {
        LOOPWRIGHT_ASSIGN(const QStringList values, valuesInOrder(query, sort, nullptr));
        walked.descending = false;
        qint64 orders = 0;
        for (const QString &value : values) {
            before -= orders;
            walked.facets.insert(*sort.valueByValue, value);
            LOOPWRIGHT_ASSIGN(orders, count(walked));
            if (before < orders)
                break;
        }
        if (before >= orders)
            return std::vector<BoardRow>(); // there are fewer
    }
    LOOPWRIGHT_ASSIGN(const auto last, lineAt(walked, sort.parts, before));
    return last ? lines(query, limit, &*last) : std::vector<BoardRow>();
}

Result<std::vector<BoardRow>> BoardStore::linesOf(const BoardQuery &query,
                                                  const BoardKeyParts &parts, int limit,
                                                  const BoardRow *after) const
{
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    LOOPWRIGHT_ASSIGN(const auto from, boardIndexFor(m_database, query, how, parts, limit));
    if (from.empty())
        return std::vector<BoardRow>();
    BoardStatement composed = statementFor(query, how, limit);
    if (after)
        composed.add(query.descending ? parts.afterDown : parts.after);
    composed.add(query.descending ? parts.byDown : parts.by);
    const auto statement = composed.on(m_database, "board.lines", partsFrom(query, from));
    if (after && parts.key)
        statement->bind("after_key", after->*parts.key);
    if (after && parts.isByDue)
        statement->bind("after_due", after->due.toString(Qt::ISODate));
    if (after)
        statement->bind("after_number", after->order);
    statement->bind("limit", limitOf(limit)).bind("offset", 0);
    return linesIn(*statement, query);
}

} // namespace loopwright
