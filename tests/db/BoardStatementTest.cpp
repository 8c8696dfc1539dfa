#include "db/BoardStatement.h"

#include "db/SqlCatalog.h"
#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

#include <sqlite3.h>

using namespace loopwright;

// The plans of the statements as they are composed: each filter and each two of them, each sort up
// and down, first and further pages. The tally is forged to say how many orders there are.
class BoardStatementTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    /// `share` of a million orders agree in everything that is asked for below, the others in
    /// nothing.
    void forgeTally(qint64 share)
    {
        SqliteConnection &connection = m_database.file();
        QVERIFY_RESULT(connection.run("DELETE FROM board_tally", "test"));
        for (const auto &[row, orders] :
             {std::pair(
                  "'open', 'calls', 'incomplete', 'calls', 'NORTH', 'K7', 'plant', 1, 1, 1, 1",
                  share),
              std::pair("'completed', 'done', 'accepted', '', 'SOUTH', 'K8', '', 0, 0, 0, 0",
                        1'000'000 - share)})
            QVERIFY_RESULT(connection.run(
                "INSERT INTO board_tally (status, stage, outcome, criterion, office, installer,"
                " waiting_on, paper, hazard, away, conflict, orders) VALUES (" +
                    QByteArray(row) + ", " + QByteArray::number(orders) + ")",
                "test"));
    }
    static QString valueOf(BoardFacet facet)
    {
        switch (facet) {
        case BoardFacet::Stage:
        case BoardFacet::Criterion:
            return "calls";
        case BoardFacet::Outcome:
            return "incomplete";
        case BoardFacet::Office:
            return "NORTH";
        case BoardFacet::Installer:
            return "K7";
        case BoardFacet::WaitingOn:
            return "plant";
        default:
            return "1";
        }
    }
    /// No filter, each one, each two; with and without days.
    static std::vector<BoardQuery> queries()
    {
        std::vector<BoardQuery> list{{}, {.pending = true}};
        for (const BoardFacetRow &one : boardFacetRows())
            for (const BoardFacetRow &two : boardFacetRows()) {
                BoardQuery query;
                query.facets = {{one.facet, valueOf(one.facet)}, {two.facet, valueOf(two.facet)}};
                list.push_back(query);
                query.pending = true;
                list.push_back(query);
            }
        const std::size_t whole = list.size();
        for (std::size_t i = 0; i < whole; ++i) {
            BoardQuery query = list[i];
            query.dueBefore = QDate(2026, 3, 4);
            list.push_back(query);
            query.dueFrom = QDate(2026, 3, 2);
            list.push_back(query);
        }
        return list;
    }
    QString planOf(const std::string &sql)
    {
        const auto plan = m_database.connection().lend(sql, "EXPLAIN QUERY PLAN " + sql);
        if (!plan)
            return "cannot be prepared: " + plan.error().text() + QString::fromStdString(sql);
        QStringList steps;
        while ((*plan)->step().value_or(false))
            steps << QString::fromUtf8((*plan)->text(3));
        return steps.join("; ");
    }
    struct Asked
    {
        std::string_view from;
        QString plan;
    };
    Asked pageOf(const BoardQuery &query, const BoardSortRow &sort, bool down, bool further)
    {
        const TextBy how = query.text.isEmpty() ? TextBy::Nothing : TextBy::Fragments;
        const auto from = boardIndexFor(m_database, query, how, sort.parts, 400);
        if (!from)
            qFatal("%s", qPrintable(from.error().text()));
        std::vector<std::string_view> parts{*from, "board.with_order", "board.where"};
        const BoardStatement statement(query, how);
        parts.insert(parts.end(), statement.parts().begin(), statement.parts().end());
        if (further)
            parts.push_back(down ? sort.parts.afterDown : sort.parts.after);
        parts.push_back(down ? sort.parts.byDown : sort.parts.by);
        return {*from, planOf(SqlCatalog::embedded().compose("board.lines", parts))};
    }
    static bool filters(const BoardQuery &query)
    {
        return !query.facets.isEmpty() || query.pending;
    }

private slots:
    // 2000 of a million: what is filtered comes out of the filter's index; by due date it is in
    // order, for another sort so few are sorted.
    void fewAreFoundByTheirFilter()
    {
        forgeTally(2000);
        int asked = 0;
        for (const BoardQuery &query : queries())
            for (const auto &[word, code] : EnumCodes<BoardSort>::table)
                for (const bool down : {false, true})
                    for (const bool further : {false, true}) {
                        const BoardSortRow &sort = boardSortRow(word);
                        const Asked page = pageOf(query, sort, down, further);
                        const QString told = QString("%1 by %2: %3")
                                                 .arg(QLatin1String(page.from.data()))
                                                 .arg(code, page.plan);
                        ++asked;
                        const bool byDue = sort.parts.isByDue && !sort.parts.key;
                        const bool ofOne = // office: all are equal in what is sorted by
                            word == BoardSort::Office && query.facets.contains(BoardFacet::Office);
                        const bool sortsDays = !byDue && !ofOne && query.dueFrom.isValid();
                        const bool sortsFew = !byDue && !ofOne && filters(query);
                        QVERIFY2(!page.plan.contains("cannot"), qPrintable(told));
                        QCOMPARE(page.plan.contains("TEMP B-TREE"), sortsDays || sortsFew);
                        if (filters(query) && word != BoardSort::Office)
                            QVERIFY2(page.from != sort.parts.from, qPrintable(told));
                        const bool walks = page.plan.contains("SCAN s");
                        const bool partial =
                            page.from == "board.from_open" || page.from == "board.from_pending" ||
                            page.from == "board.from_paper" || page.from == "board.from_hazard" ||
                            page.from == "board.from_away" || page.from == "board.from_conflict";
                        // What is walked over from its beginning is the sort's index, or one that
                        // has the few alone.
                        if (walks)
                            QVERIFY2(partial || page.from == sort.parts.from, qPrintable(told));
                    }
        QCOMPARE(asked, 732 * 48);
    }
    // Nearly all of a million: the sort's index has a page of them at its beginning.
    void manyAreFoundByTheSort()
    {
        forgeTally(900'000);
        for (const BoardQuery &query : queries()) {
            if (query.dueFrom.isValid())
                continue;
            for (const auto &[word, code] : EnumCodes<BoardSort>::table)
                for (const bool down : {false, true}) {
                    const Asked page = pageOf(query, boardSortRow(word), down, true);
                    QVERIFY2(!page.plan.contains("TEMP B-TREE") && !page.plan.contains("cannot"),
                             qPrintable(page.plan + " by " + code));
                }
        }
    }
    // What has missed its date stands in an index of its own, from which it is counted too; a
    // filter with fewer orders goes before it.
    void missedDatesHaveTheirIndex()
    {
        for (const qint64 share : {2000, 900'000}) {
            forgeTally(share);
            for (const BoardFacetRow &row : boardFacetRows())
                for (const auto &[word, code] : EnumCodes<BoardSort>::table)
                    for (const bool down : {false, true}) {
                        BoardQuery query;
                        query.missedBefore = QDate(2026, 3, 4);
                        const Asked page = pageOf(query, boardSortRow(word), down, true);
                        QCOMPARE(page.from, std::string_view("board.from_missed"));
                        QVERIFY2(page.plan.contains("USING INDEX order_state_missed"),
                                 qPrintable(page.plan));
                        query.facets = {{row.facet, valueOf(row.facet)}};
                        const Asked both = pageOf(query, boardSortRow(word), down, true);
                        QVERIFY2(both.from == "board.from_missed" || both.from == row.from,
                                 both.from.data());
                        QVERIFY2(!both.plan.contains("cannot"), qPrintable(both.plan));
                        if (boardSortRow(word).parts.isByDue && !boardSortRow(word).parts.key)
                            QVERIFY2(!both.plan.contains("TEMP B-TREE"), qPrintable(both.plan));
                    }
        }
        BoardQuery query;
        query.missedBefore = QDate(2026, 3, 4);
        for (const bool open : {false, true}) {
            if (open)
                query.facets = {{BoardFacet::Open, "1"}};
            std::vector<std::string_view> parts{"board.from_missed", "board.where"};
            const BoardStatement statement(query);
            parts.insert(parts.end(), statement.parts().begin(), statement.parts().end());
            const QString plan = planOf(SqlCatalog::embedded().compose("board.count", parts));
            QVERIFY2(plan.contains("USING COVERING INDEX order_state_missed"), qPrintable(plan));
        }
    }
    void noneAreNotLookedFor()
    {
        forgeTally(2000);
        for (const BoardFacetRow &row : boardFacetRows()) {
            BoardQuery query;
            query.facets = {
                {row.facet, row.parameter ? "nobody" : "1"},
                {BoardFacet::Office, row.facet == BoardFacet::Office ? "nobody" : "SOUTH"}};
            for (const auto &[word, code] : EnumCodes<BoardSort>::table) {
                const auto from = boardIndexFor(m_database, query, TextBy::Nothing,
                                                boardSortRow(word).parts, 400);
                QVERIFY_RESULT(from);
                QVERIFY2(from->empty(), from->data());
            }
        }
    }
    void whatOneFilterHasIsAskedByAnIndexOfTheTally()
    {
        for (const BoardFacetRow &row : boardFacetRows()) {
            const QString plan = planOf(SqlCatalog::embedded().compose(
                "board.sum", {"board.from_tally", "board.where", row.part}));
            QVERIFY2(plan.startsWith("SEARCH s USING"), qPrintable(plan));
        }
    }
    void aSearchGoesByTheTextIndex()
    {
        forgeTally(900'000);
        for (BoardQuery query : queries()) {
            query.text = "bakery 217-555";
            const Asked page = pageOf(query, boardSortRow(BoardSort::Urgency), false, false);
            QVERIFY2(page.plan.startsWith("CO-ROUTINE f; SCAN order_search VIRTUAL TABLE INDEX") &&
                         page.plan.contains("SEARCH s USING INTEGER PRIMARY KEY"),
                     qPrintable(page.plan));
        }
    }
    void aNameOfAnInstallerGoesByHisIndex()
    {
        forgeTally(900'000);
        for (BoardQuery query : queries()) {
            query.text = "kim bakery";
            query.named = {{"K7", {"bakery"}}};
            for (const BoardSort sort : {BoardSort::Urgency, BoardSort::Customer}) {
                const Asked page = pageOf(query, boardSortRow(sort), false, false);
                QCOMPARE(page.from, std::string_view("board.from_search_or_named"));
                QVERIFY2(page.plan.contains("SCAN order_search VIRTUAL TABLE INDEX") &&
                             page.plan.contains("SEARCH x USING COVERING INDEX "
                                                "order_state_installer (installer=?)") &&
                             page.plan.contains("SEARCH p USING INTEGER PRIMARY KEY") &&
                             page.plan.contains("SEARCH s USING INTEGER PRIMARY KEY"),
                         qPrintable(page.plan));
            }
        }
    }
};

QTEST_GUILESS_MAIN(BoardStatementTest)
#include "BoardStatementTest.moc"
