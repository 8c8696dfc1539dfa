#include "db/BoardStatement.h"

#include "db/SearchText.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr BoardFacetRow facetTable[] = {
    {BoardFacet::Open, "board.open", nullptr, "board.from_open"},
    {BoardFacet::Stage, "board.stage", "stage", "board.from_stage"},
    {BoardFacet::Outcome, "board.outcome", "outcome", "board.from_outcome"},
    {BoardFacet::Criterion, "board.criterion", "criterion", "board.from_criterion"},
    {BoardFacet::Office, "board.office", "office", "board.from_office"},
    {BoardFacet::Installer, "board.installer", "installer", "board.from_installer"},
    {BoardFacet::WaitingOn, "board.waiting_on", "waiting_on", "board.from_waiting_on",
     "board.on_nobody"},
    {BoardFacet::Paper, "board.paper", nullptr, "board.from_paper"},
    {BoardFacet::Hazard, "board.hazard", nullptr, "board.from_hazard", "board.no_hazard"},
    {BoardFacet::Away, "board.away", nullptr, "board.from_away", "board.at_home"},
    {BoardFacet::Conflict, "board.conflict", nullptr, "board.from_conflict", "board.no_conflict"}};

constexpr BoardKeyParts byDue{"board.from_due", "board.by_due", "board.by_due_down",
                              "board.after_due", "board.after_due_down"};
constexpr BoardKeyParts byNumber{"board.from_number",       "board.by_number",
                                 "board.by_number_down",    "board.after_number",
                                 "board.after_number_down", false};
constexpr BoardKeyParts byOffice{"board.from_office",       "board.by_office",
                                 "board.by_office_down",    "board.after_office",
                                 "board.after_office_down", true,
                                 &BoardRow::office};
constexpr BoardKeyParts byCustomer{"board.from_customer",       "board.by_customer",
                                   "board.by_customer_down",    "board.after_customer",
                                   "board.after_customer_down", true,
                                   &BoardRow::customer};
constexpr BoardKeyParts byCircuit{"board.from_circuit",       "board.by_circuit",
                                  "board.by_circuit_down",    "board.after_circuit",
                                  "board.after_circuit_down", true,
                                  &BoardRow::circuit};
constexpr BoardKeyParts byPair{"board.from_pair",  "board.by_pair",         "board.by_pair_down",
                               "board.after_pair", "board.after_pair_down", true,
                               &BoardRow::pair};

constexpr BoardSortRow sortTable[] = {
    {BoardSort::Urgency, byDue, BoardFacet::Hazard, "board.by_hazard_rank",
     "board.after_hazard_rank"},
    {BoardSort::Due, byDue},
    {BoardSort::Number, byNumber},
    {BoardSort::Stage, byDue, BoardFacet::Stage, "board.by_stage_rank", "board.after_stage_rank",
     "board.stages"},
    {BoardSort::Outcome, byDue, BoardFacet::Outcome, "board.by_outcome_rank",
     "board.after_outcome_rank", "board.outcomes"},
    {BoardSort::Criterion, byDue, BoardFacet::Criterion, "board.by_criterion_rank",
     "board.after_criterion_rank", "board.criteria"},
    {BoardSort::Office, byOffice},
    {BoardSort::Installer, byDue, BoardFacet::Installer, "board.by_installer_rank",
     "board.after_installer_rank", "board.installers"},
    {BoardSort::Customer, byCustomer},
    {BoardSort::Circuit, byCircuit},
    {BoardSort::Pair, byPair},
    {BoardSort::WaitingOn, byDue, BoardFacet::WaitingOn, "board.by_waiting_on_rank",
     "board.after_waiting_on_rank", "board.waited_on"}};
static_assert(std::size(sortTable) == std::size(EnumCodes<BoardSort>::table));

bool isOff(const BoardFacetRow &row, const QString &value)
{
    return row.parameter ? value.isEmpty() && !row.off.empty() : value == u"0";
}

struct IndexChoice
{
    std::string_view from;
    qint64 orders; ///< that the index has
};

/// The index of the filter with the fewest orders; none if nothing is filtered.
Result<std::optional<IndexChoice>> smallestFilter(const Database &database, const BoardQuery &query)
{
    std::optional<IndexChoice> smallest;
    const auto offer = [&](const BoardQuery &one, std::string_view from) -> Result<void> {
        LOOPWRIGHT_ASSIGN(const auto orders, boardTally(database, one));
        if (!smallest || orders < smallest->orders)
            smallest = IndexChoice{from, orders};
        return {};
    };
    if (query.pending) {
        BoardQuery one;
        one.pending = true;
        LOOPWRIGHT_TRY(offer(one, "board.from_pending"));
    }
    if (query.missedBefore.isValid()) {
        // The tally knows no days: most of that index are the open orders.
        BoardQuery one;
        one.facets.insert(BoardFacet::Open, QStringLiteral("1"));
        LOOPWRIGHT_TRY(offer(one, "board.from_missed"));
    }
    for (const BoardFacetRow &row : facetTable) {
        const auto chosen = query.facets.constFind(row.facet);
        if (chosen == query.facets.constEnd() || isOff(row, *chosen))
            continue;
        BoardQuery one;
        one.facets.insert(row.facet, *chosen);
        LOOPWRIGHT_TRY(offer(one, row.from));
    }
    return smallest;
}

} // namespace

std::span<const BoardFacetRow> boardFacetRows()
{
    return facetTable;
}

const BoardSortRow &boardSortRow(BoardSort sort)
{
    return *std::ranges::find(sortTable, sort, &BoardSortRow::sort);
}

Result<TextBy> textBy(const Database &database, const QString &text)
{
    const QString digits = wholeNumber(text);
    if (!digits.isEmpty()) {
        Statement statement(database, "board.has_whole_number");
        statement.bind("digits", digits);
        LOOPWRIGHT_ASSIGN(const auto there, firstRow(statement, [](const Statement &row) {
                              return row.boolean("there");
                          }));
        if (there.value_or(false))
            return TextBy::WholeNumber;
    }
    return searchTerms(text).words.empty() ? TextBy::Nothing : TextBy::Fragments;
}

int mostOfEach(const BoardQuery &query)
{
    return std::max(1, mostFound / std::max(1, int(query.named.size())));
}

BoardStatement::BoardStatement(const BoardQuery &query, TextBy textBy)
{
    if (textBy == TextBy::Fragments)
        m_mostFound = mostFound;
    for (const BoardFacetRow &row : facetTable) {
        const auto chosen = query.facets.constFind(row.facet);
        if (chosen == query.facets.constEnd())
            continue;
        const bool off = isOff(row, *chosen);
        add(off ? row.off : row.part);
        if (row.parameter && !off)
            m_values.emplace_back(row.parameter, *chosen);
    }
    if (query.pending)
        add("board.pending");
    bindText("board.missed", "missed_before", query.missedBefore.toString(Qt::ISODate));
    bindText("board.due_from", "due_from", query.dueFrom.toString(Qt::ISODate));
    bindText("board.due_before", "due_before", query.dueBefore.toString(Qt::ISODate));
    if (textBy == TextBy::WholeNumber) {
        m_values.emplace_back("digits", wholeNumber(query.text));
        return;
    }
    const SearchTerms terms = searchTerms(query.text);
    if (textBy == TextBy::Fragments)
        m_terms = terms;
    const bool named = textBy == TextBy::Fragments && !query.named.empty();
    if (named) {
        m_values.emplace_back("named", toJson(query.named));
        m_mostEach = mostOfEach(query);
    }
    if (terms.shortWords != u"[]")
        bindText(named ? "board.short_words_or_named" : "board.short_words", "short_words",
                 terms.shortWords);
}

void BoardStatement::bindText(std::string_view part, const char *name, const QString &value)
{
    if (value.isEmpty())
        return;
    add(part);
    m_values.emplace_back(name, value);
}

std::unique_ptr<Statement> BoardStatement::on(const Database &database, std::string_view label,
                                              const std::vector<std::string_view> &from) const
{
    std::vector<std::string_view> parts = from;
    parts.push_back("board.where");
    parts.insert(parts.end(), m_parts.begin(), m_parts.end());
    auto statement = std::make_unique<Statement>(database, label, parts);
    for (const auto &[name, value] : m_values)
        statement->bind(name, value);
    if (m_terms)
        bindWords(*statement, *m_terms);
    if (m_mostFound)
        statement->bind("most_found", *m_mostFound);
    if (m_mostEach)
        statement->bind("most_each", *m_mostEach);
    return statement;
}

BoardStatement tallyStatement(BoardQuery query)
{
    query.dueFrom = query.dueBefore = query.missedBefore = {};
    query.text.clear();
    return BoardStatement(query);
}

Result<qint64> boardTally(const Database &database, const BoardQuery &query)
{
    const auto statement = tallyStatement(query).on(database, "board.sum", {"board.from_tally"});
    const auto found =
        firstRow(*statement, [](const Statement &row) { return row.integer("orders"); });
    if (!found)
        return failure(found.error());
    return found->value_or(0);
}

Result<std::string_view> boardIndexFor(const Database &database, const BoardQuery &query,
                                       TextBy textBy, const BoardKeyParts &sort, int limit)
{
    if (textBy == TextBy::WholeNumber)
        return std::string_view("board.from_whole_number");
    if (textBy == TextBy::Fragments)
        return std::string_view(query.named.empty() ? "board.from_search"
                                                    : "board.from_search_or_named");
    LOOPWRIGHT_ASSIGN(const auto filter, smallestFilter(database, query));
    const bool fewDays = query.dueFrom.isValid() && query.dueBefore.isValid();
    if (!filter)
        return fewDays ? byDue.from : sort.from;
    LOOPWRIGHT_ASSIGN(const auto matching, boardTally(database, query));
    if (matching == 0)
        return std::string_view();
    if (fewDays || sort.from == byDue.from || query.missedBefore.isValid())
        return filter->from;
    // By the sort's index `limit` rows are found among so many; by the filter's all are sorted.
    LOOPWRIGHT_ASSIGN(const auto all, boardTally(database, {}));
    const qint64 read = limit < 0 ? all : std::min(all, (limit * all) / matching);
    return read < filter->orders ? sort.from : filter->from;
}

} // namespace loopwright
