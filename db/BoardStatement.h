#pragma once
// How a question to the board becomes one statement: which index it goes by, which parts of
// board.sql it needs, what is bound to them. Nothing that was typed ever becomes part of it.
//
// The index is named in the statement. SQLite knows nothing of how many orders a filter has; the
// tally does: the filter with the fewest orders decides, or the sort where that reads less.

#include "core/acceptance/BoardQuery.h"
#include "core/acceptance/BoardRow.h"
#include "db/SearchText.h"
#include "db/Statement.h"

#include <span>

namespace loopwright {

/// A filter of the board: one row of the table in BoardStatement.cpp.
struct BoardFacetRow
{
    BoardFacet facet;
    std::string_view part;
    const char *parameter; ///< null for a filter that is on ("1") or off ("0")
    std::string_view from; ///< its index, by due date within each value
    /// The part for "0", or for the empty value, which the index has not; empty if nobody asks.
    std::string_view off = {};
};
std::span<const BoardFacetRow> boardFacetRows();

/// The parts of board.sql for the order of one index.
struct BoardKeyParts
{
    std::string_view from, by, byDown, after, afterDown;
    bool isByDue = true;              ///< :after_due is bound
    QString BoardRow::*key = nullptr; ///< bound to :after_key; null where there is none
};

/// A sort of the board: one row of the table there.
struct BoardSortRow
{
    BoardSort sort;
    BoardKeyParts parts;
    /// The values of this filter one after the other, each by `parts`; of what a search found by
    /// the rank of the value, with the parts below.
    std::optional<BoardFacet> valueByValue = std::nullopt;
    std::string_view byRank = {}, afterRank = {};
    std::string_view values = {}; ///< those that the tally has; empty if they are known
};
const BoardSortRow &boardSortRow(BoardSort sort);

/// How the text of a query is looked for.
enum class TextBy
{
    Nothing,    ///< there is none, or words of one or two letters alone
    Fragments,  ///< the newest orders with them, up to mostFound
    WholeNumber ///< by its key
};
Result<TextBy> textBy(const Database &database, const QString &text);

/// So many of the newest orders with the words of a search are looked at, unless all are asked for.
inline constexpr int mostFound = 2000;
/// So many of the latest orders of each of those who are named in it.
int mostOfEach(const BoardQuery &query);

class BoardStatement
{
public:
    /// The parts for filters, dates and text of the query.
    explicit BoardStatement(const BoardQuery &query, TextBy textBy = TextBy::Nothing);

    BoardStatement &add(std::string_view part)
    {
        m_parts.push_back(part);
        return *this;
    }
    /// Every order with the words of a search, for who asks for all rows.
    BoardStatement &findAll()
    {
        for (auto *most : {&m_mostFound, &m_mostEach})
            if (*most)
                *most = noLimit;
        return *this;
    }
    const std::vector<std::string_view> &parts() const { return m_parts; }
    /// Prepared from `label`, `from`, "board.where" and the parts, and bound.
    std::unique_ptr<Statement> on(const Database &database, std::string_view label,
                                  const std::vector<std::string_view> &from) const;

private:
    void bindText(std::string_view part, const char *name, const QString &value);

    std::vector<std::string_view> m_parts;
    std::vector<std::pair<const char *, QString>> m_values;
    std::optional<SearchTerms> m_terms; ///< of a search for fragments
    std::optional<qint64> m_mostFound;  ///< likewise
    std::optional<qint64> m_mostEach;   ///< of each who is named in it
};

/// Of what the tally knows: the filters without dates and text.
BoardStatement tallyStatement(BoardQuery query);
/// So few orders are sorted faster than they are read value by value.
inline constexpr int fewToSort = 4000;

/// How many orders the tally has under the filters of a query, whatever they are due and called.
Result<qint64> boardTally(const Database &database, const BoardQuery &query);

/// The part of board.sql that names where the rows of the query come from; empty where the tally
/// says that there are none. `limit` -1: all are wanted.
Result<std::string_view> boardIndexFor(const Database &database, const BoardQuery &query,
                                       TextBy textBy, const BoardKeyParts &sort, int limit);

/// A row of a statement that begins with "board.lines".
BoardRow readBoardRow(const Statement &row);

} // namespace loopwright
