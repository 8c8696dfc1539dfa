// Longer than 400 lines: pages, searches and the tally are asked about the same few orders.

#include "db/BoardStore.h"

#include "db/BoardStatement.h"
#include "db/Connection.h"
#include "db/SearchText.h"
#include "tests/support/StoredJobs.h"

#include <rapidcheck.h>

using namespace loopwright;
using jobs::changed;

namespace {

struct Sample
{
    const char *number, *due, *office, *installer;
    Stage stage;
    const char *customer;
    OrderOutcome outcome;
    const char *criterion;
    OrderStatus status;
    const char *waitingOn;
    bool paper;
};

constexpr Sample samples[] = {
    {"A-1", "2026-03-02", "NORTH", "K7", stageAt(Station::Loop), "Müller Bakery",
     OrderOutcome::Incomplete, "loop", OrderStatus::Open, "", false},
    {"A-2", "2026-03-02", "NORTH", "K8", stageAt(Station::Loop), "Quiet Cafe",
     OrderOutcome::NotAccepted, "layer1", OrderStatus::Open, "plant", false},
    {"A-3", "2026-03-05", "SOUTH", "K7", Stage::Done, "Harbour Inn", OrderOutcome::Accepted, "",
     OrderStatus::Completed, "", false},
    {"A-4", "2026-03-01", "SOUTH", "", stageAt(Station::Calls), "Łódź Store",
     OrderOutcome::Incomplete, "calls", OrderStatus::Open, "plant", false},
    {"A-5", "2026-02-01", "NORTH", "K7", Stage::Done, "Quiet Garden", OrderOutcome::Accepted, "",
     OrderStatus::Completed, "", true},
};

OrderState stateOf(const Sample &sample)
{
    OrderState state;
    state.status = sample.status;
    state.stage = sample.stage;
    state.outcome = sample.outcome;
    state.criterion = sample.criterion;
    state.reason = "because";
    state.waitingOn = sample.waitingOn;
    state.paper = sample.paper;
    state.facts = 3;
    state.runs = 1;
    return state;
}

BoardQuery with(BoardFacet facet, const QString &value)
{
    return {.facets = {{facet, value}}};
}

BoardQuery sorted(BoardSort sort, bool descending = false)
{
    return {.sort = sort, .descending = descending};
}

} // namespace

class BoardStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    ServiceOrder orderOf(const Sample &sample)
    {
        const QString n = QString(sample.number).right(1);
        return changed(jobs::briFields(), {{"order_number", sample.number},
                                           {"circuit_number", "C-" + n},
                                           {"due_date", sample.due},
                                           {"office", sample.office},
                                           {"installer", sample.installer},
                                           {"customer", QString::fromUtf8(sample.customer)},
                                           {"pair", "1" + QString::number(9 - n.toInt()) + "-1"},
                                           {"dn_1", "217-555-010" + n}});
    }
    Result<void> put(const ServiceOrder &order, const OrderState &state)
    {
        return jobs::inTransaction(m_database, circuitSubject(order.circuit), [&](Transaction &t) {
            return BoardStore::put(t, order, state);
        });
    }
    QStringList found(const BoardQuery &query, int limit = -1, const BoardRow *after = nullptr)
    {
        QStringList numbers;
        const auto lines = BoardStore(m_database).lines(query, limit, after);
        if (!lines)
            return {lines.error().text()};
        for (const BoardRow &line : *lines)
            numbers << line.order;
        return numbers;
    }

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addOffice(m_database, "NORTH"));
        QVERIFY_RESULT(jobs::addOffice(m_database, "SOUTH"));
        QVERIFY_RESULT(jobs::inTransaction(
            m_database, registerSubject(), [](Transaction &transaction) -> Result<void> {
                LOOPWRIGHT_TRY(PersonStore::put(transaction, {"K7", "Z. Rivera", Role::Installer}));
                return PersonStore::put(transaction, {"K8", "A. Okafor", Role::Installer});
            }));
        for (const Sample &sample : samples) {
            const ServiceOrder order = orderOf(sample);
            QVERIFY_RESULT(jobs::addOrder(m_database, order, order.number == "A-4"));
            QVERIFY_RESULT(put(order, stateOf(sample)));
        }
    }
    /// Whatever is due before, but not of what is done.
    void openHazardsStandFirst()
    {
        for (const Sample &sample : samples) {
            const QString number = sample.number;
            if (number != u"A-2" && number != u"A-3" && number != u"A-5")
                continue;
            OrderState state = stateOf(sample);
            state.hazard = true;
            QVERIFY_RESULT(put(orderOf(sample), state));
        }
        const BoardStore store(m_database);
        QStringList all = found({});
        QCOMPARE(all.value(0), "A-2"); // are done, and stand where they are due
        const QStringList whole = all;
        QCOMPARE(all.size(), 5);
        all.removeFirst();
        QCOMPARE(all, (QStringList{"A-5", "A-4", "A-1", "A-3"}));
        // Page by page.
        QStringList paged;
        std::optional<BoardRow> last;
        for (int page = 0; page < 5; ++page) {
            const auto lines = store.lines({}, 1, last ? &*last : nullptr);
            QVERIFY_RESULT(lines);
            QCOMPARE(lines->size(), 1U);
            last = lines->front();
            paged << last->order;
        }
        QCOMPARE(paged, whole);
        const BoardQuery hazards = with(BoardFacet::Hazard, "1");
        QCOMPARE(found(hazards), QStringList("A-2"));
        QCOMPARE(*store.count(hazards), 1);
    }
    void filters_data()
    {
        QTest::addColumn<BoardQuery>("query");
        QTest::addColumn<QStringList>("numbers");
        const auto row = [](const char *name, BoardQuery query, QStringList numbers) {
            QTest::newRow(name) << query << numbers;
        };
        const auto text = [](const char *typed) {
            BoardQuery query;
            query.text = QString::fromUtf8(typed);
            return query;
        };
        row("all, by due date then number", {}, {"A-5", "A-4", "A-1", "A-2", "A-3"});
        row("stage", with(BoardFacet::Stage, "loop"), {"A-1", "A-2"});
        row("office", with(BoardFacet::Office, "SOUTH"), {"A-4", "A-3"});
        row("installer", with(BoardFacet::Installer, "K7"), {"A-5", "A-1", "A-3"});
        row("nobody", with(BoardFacet::Installer, ""), {"A-4"});
        row("outcome", with(BoardFacet::Outcome, "accepted"), {"A-5", "A-3"});
        row("criterion", with(BoardFacet::Criterion, "layer1"), {"A-2"});
        row("no criterion", with(BoardFacet::Criterion, ""), {"A-5", "A-3"});
        row("waiting on", with(BoardFacet::WaitingOn, "plant"), {"A-4", "A-2"});
        row("waiting on nobody", with(BoardFacet::WaitingOn, ""), {"A-5", "A-1", "A-3"});
        row("by whom it waits on", sorted(BoardSort::WaitingOn),
            {"A-4", "A-2", "A-5", "A-1", "A-3"});
        row("open", with(BoardFacet::Open, "1"), {"A-4", "A-1", "A-2"});
        row("paper", with(BoardFacet::Paper, "1"), {"A-5"});
        row("due from", {.dueFrom = QDate(2026, 3, 2)}, {"A-1", "A-2", "A-3"});
        row("due before", {.dueBefore = QDate(2026, 3, 2)}, {"A-5", "A-4"});
        row("one day", {.dueFrom = QDate(2026, 3, 2), .dueBefore = QDate(2026, 3, 3)},
            {"A-1", "A-2"});
        row("late", {.dueBefore = QDate(2026, 3, 3), .pending = true}, {"A-4", "A-1", "A-2"});
        row("stage and office",
            {.facets = {{BoardFacet::Stage, "done"}, {BoardFacet::Office, "NORTH"}}}, {"A-5"});
        row("nothing", with(BoardFacet::Stage, "safety"), {});
        row("nothing together",
            {.facets = {{BoardFacet::Outcome, "accepted"}, {BoardFacet::Criterion, "calls"}}}, {});
        row("by number", sorted(BoardSort::Number), {"A-1", "A-2", "A-3", "A-4", "A-5"});
        row("by due, downwards", sorted(BoardSort::Due, true), {"A-3", "A-2", "A-1", "A-4", "A-5"});
        row("by stage", sorted(BoardSort::Stage), {"A-1", "A-2", "A-4", "A-5", "A-3"});
        row("by stage, downwards", sorted(BoardSort::Stage, true),
            {"A-5", "A-3", "A-4", "A-1", "A-2"});
        row("by outcome", sorted(BoardSort::Outcome), {"A-2", "A-4", "A-1", "A-5", "A-3"});
        row("by criterion", sorted(BoardSort::Criterion), {"A-1", "A-2", "A-4", "A-5", "A-3"});
        row("by installer's name, nobody last", sorted(BoardSort::Installer),
            {"A-2", "A-5", "A-1", "A-3", "A-4"});
        row("by office", sorted(BoardSort::Office), {"A-5", "A-1", "A-2", "A-4", "A-3"});
        row("by customer", sorted(BoardSort::Customer), {"A-3", "A-1", "A-2", "A-5", "A-4"});
        row("by pair", sorted(BoardSort::Pair), {"A-5", "A-4", "A-3", "A-2", "A-1"});
        row("by circuit, downwards", sorted(BoardSort::Circuit, true),
            {"A-5", "A-4", "A-3", "A-2", "A-1"});
        BoardQuery openByCustomer = with(BoardFacet::Open, "1");
        openByCustomer.sort = BoardSort::Customer;
        row("open by customer", openByCustomer, {"A-1", "A-2", "A-4"});
        row("part of a name", text("uie"), {"A-5", "A-2"});
        row("accents", text("muller"), {"A-1"});
        row("accents typed", text("LÓDŹ"), {"A-4"});
        row("two words", text("quiet gard"), {"A-5"});
        row("number with its separators", text("555-0103"), {"A-3"});
        row("number without", text("2175550103"), {"A-3"});
        row("order number", text("a-4"), {"A-4"});
        row("short", text("c"), {"A-5", "A-4", "A-1", "A-2", "A-3"});
        row("short and long", text("-4 sto"), {"A-4"});
        row("two short", text("ca fe"), {"A-2"});
        row("no such text", text("zebra"), {});
        row("what the text index would take for a command", text("\" OR NEAR(* -x"), {});
        BoardQuery both = text("quiet");
        both.facets.insert(BoardFacet::Stage, "loop");
        row("text and stage", both, {"A-2"});
    }
    void filters()
    {
        QFETCH(BoardQuery, query);
        QFETCH(QStringList, numbers);
        QCOMPARE(found(query), numbers);
        QCOMPARE(*BoardStore(m_database).count(query), qint64(numbers.size()));
        // Page by page it is the same, whatever it is sorted by.
        QStringList paged;
        std::optional<BoardRow> last;
        for (int page = 0; page <= numbers.size(); ++page) {
            const auto lines = BoardStore(m_database).lines(query, 1, last ? &*last : nullptr);
            QVERIFY_RESULT(lines);
            if (lines->empty())
                break;
            last = lines->front();
            paged << last->order;
        }
        QCOMPARE(paged, numbers);
        // From any place on, too.
        for (int place = 0; place <= numbers.size() + 1; ++place) {
            const auto lines = BoardStore(m_database).linesAt(query, place, 2);
            QVERIFY_RESULT(lines);
            QStringList there;
            for (const BoardRow &line : *lines)
                there << line.order;
            QCOMPARE(there, numbers.mid(place, 2));
        }
    }
    /// One walk over what was found gives what many by value would.
    void aSearchIsSortedAsTheBoardIs()
    {
        for (const auto &[sort, code] : EnumCodes<BoardSort>::table)
            for (const bool down : {false, true}) {
                BoardQuery all = sorted(sort, down), search = all;
                search.text = "mill lane"; // all are there
                const QStringList numbers = found(all);
                QCOMPARE(numbers.size(), 5);
                QCOMPARE(found(search), numbers);
                QStringList paged;
                std::optional<BoardRow> last;
                for (int page = 0; page < 5; ++page) {
                    const auto lines =
                        BoardStore(m_database).lines(search, 1, last ? &*last : nullptr);
                    QVERIFY_RESULT(lines);
                    QCOMPARE(lines->size(), 1U);
                    last = lines->front();
                    paged << last->order;
                }
                QCOMPARE(paged, numbers);
                const auto end = BoardStore(m_database).linesAt(search, 3, 9);
                QVERIFY_RESULT(end);
                QCOMPARE(end->size(), 2U);
                QCOMPARE(end->back().order, numbers.back());
            }
    }
    /// A whole number goes by its key, and finds every order of its circuit that names it.
    void aWholeNumberGoesByItsKey()
    {
        const ServiceOrder first = orderOf(samples[2]);
        ServiceOrder end = first; // claims no number, and so has no key
        end.number = "A-8";
        end.type = OrderType::Disconnect;
        QVERIFY_RESULT(jobs::addOrder(m_database, end));
        QVERIFY_RESULT(put(end, stateOf(samples[2])));
        for (const char *typed : {"2175550103", "217-555-0103", "(217) 555-0103", "12175550103"}) {
            const auto how = textBy(m_database, typed);
            QVERIFY_RESULT(how);
            QCOMPARE(*how, TextBy::WholeNumber);
        }
        QCOMPARE(found({.text = "(217) 555-0103"}), (QStringList{"A-3", "A-8"}));
        QCOMPARE(*BoardStore(m_database).count({.text = "2175550103"}), 2);
        QCOMPARE(found({.text = "21755501430101"}).size(), 6); // the SPID of all
        for (const char *typed : {"5550103", "2175550199", "2175550103 quiet"}) {
            const auto how = textBy(m_database, typed);
            QVERIFY_RESULT(how);
            QCOMPARE(*how, TextBy::Fragments);
        }
        QCOMPARE(*BoardStore(m_database).findsMore({.text = "mill"}), false);
    }
    /// The newest are looked at where a page is asked for, and all of them where all are.
    void aSearchIsBoundedUnlessAllAreAskedFor()
    {
        if (!m_database.isFile())
            QSKIP("an index of a server holds what its table does");
        QVERIFY_RESULT(m_database.connection().run(
            "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 2100)"
            " INSERT INTO order_search (rowid, search) SELECT 1000 + i, 'mill lane' FROM n",
            "test"));
        const BoardStore store(m_database);
        QVERIFY(*store.findsMore({.text = "mill lane"}));
        QCOMPARE(found({.text = "mill lane"}, 400).size(), 0); // newer ones are no orders
        QCOMPARE(found({.text = "mill lane"}).size(), 5);
        QVERIFY(!*store.findsMore({.text = "quiet"}));
    }
    /// In pages, counts and sums: each order once, by its text or by the name of its installer.
    void aNameFindsTheOrdersOfItsInstaller()
    {
        const QList<Person> people{{"K7", "Z. Rivera", Role::Installer},
                                   {"K8", "A. Okafor", Role::Installer}};
        const auto typed = [&people](const QString &text, BoardSort sort = BoardSort::Number) {
            return BoardQuery{.text = text, .named = installersNamed(people, text), .sort = sort};
        };
        const BoardStore store(m_database);
        const auto counted = [&](const QString &text) {
            qint64 orders = 0;
            const auto grouped = store.grouped(typed(text), QDate(2026, 3, 4));
            for (const BoardCombination &one : *grouped)
                orders += one.orders;
            return std::pair(*store.count(typed(text)), orders);
        };
        for (const auto &[text, numbers] :
             {std::pair("rivera", QStringList{"A-1", "A-3", "A-5"}),
              std::pair("z. rivera", QStringList{"A-1", "A-3", "A-5"}),
              std::pair("rivera quiet", QStringList{"A-5"}),
              std::pair("rivera q", QStringList{"A-5"}), // short words are held against the text
              std::pair("okafor", QStringList{"A-2"}), std::pair("okafor rivera", QStringList()),
              std::pair("quiet", QStringList{"A-2", "A-5"})}) {
            QCOMPARE(found(typed(text)), numbers);
            QCOMPARE(counted(text), std::pair(qint64(numbers.size()), qint64(numbers.size())));
        }
        ServiceOrder both = orderOf(samples[0]); // of K7, by its text too
        both.customer = "Rivera Bakery";
        QVERIFY_RESULT(put(both, stateOf(samples[0])));
        ServiceOrder other = orderOf(samples[1]); // of K8
        other.customer = "Rivera Cafe";
        QVERIFY_RESULT(put(other, stateOf(samples[1])));
        QCOMPARE(found(typed("rivera")), (QStringList{"A-1", "A-2", "A-3", "A-5"}));
        QCOMPARE(counted("rivera"), std::pair(qint64(4), qint64(4)));
        for (const auto &[sort, code] : EnumCodes<BoardSort>::table) {
            const QStringList whole = found(typed("rivera", sort));
            QCOMPARE(whole.size(), 4);
            const auto end = store.linesAt(typed("rivera", sort), 2, 9);
            QVERIFY_RESULT(end);
            QCOMPARE(end->size(), 2U);
            QCOMPARE(end->back().order, whole.back());
        }
        BoardQuery open = typed("rivera");
        open.facets.insert(BoardFacet::Open, "1");
        QCOMPARE(found(open), (QStringList{"A-1", "A-2"}));
        // He may have more than are looked at.
        QVERIFY(!*store.findsMore(typed("rivera")));
        QVERIFY_RESULT(
            editPast(m_database, "UPDATE board_tally SET orders = 3000 WHERE installer = 'K7'"));
        QVERIFY(*store.findsMore(typed("rivera")));
    }
    void aSearchSaysWhereItsWordsAre()
    {
        const BoardStore store(m_database);
        for (const BoardSort sort : {BoardSort::Urgency, BoardSort::Customer}) {
            const auto lines = store.lines({.text = "quiet", .sort = sort});
            QVERIFY_RESULT(lines);
            QCOMPARE(lines->size(), 2U);
            for (const BoardRow &line : *lines)
                QCOMPARE(line.foundIn, QStringList("customer"));
        }
        QCOMPARE(store.lines({.text = "217-555-0103"})->front().foundIn, QStringList("dn_1"));
        QCOMPARE(store.lines({.text = "rivera", .named = {{"K7", {}}}})->front().foundIn,
                 QStringList("installer"));
        QCOMPARE(store.lines({})->front().foundIn, QStringList()); // nothing is searched
    }
    void aLineSaysAll()
    {
        const auto lines = BoardStore(m_database).lines(with(BoardFacet::Stage, "calls"));
        QVERIFY_RESULT(lines);
        const BoardRow &line = lines->front();
        QCOMPARE(line.order, "A-4");
        QCOMPARE(line.circuit, "C-4");
        QCOMPARE(line.customer, "Łódź Store");
        QCOMPARE(line.premises, "12 Mill Lane");
        QCOMPARE(line.office, "SOUTH");
        QCOMPARE(line.installer, "");
        QCOMPARE(line.installerName, "");
        QCOMPARE(line.pair, "15-1");
        QCOMPARE(line.criterion, "calls");
        QCOMPARE(line.waitingOn, "plant");
        QVERIFY(!line.paper);
        QCOMPARE(line.reason, "because");
        QCOMPARE(line.kind, LineKind::Bri);
        QCOMPARE(line.outcome, OrderOutcome::Incomplete);
        QCOMPARE(line.due, QDate(2026, 3, 1));
        QCOMPARE(line.status, OrderStatus::Open);
        QVERIFY(line.held);
        QCOMPARE(line.facts, 3);
        QCOMPARE(line.runs, 1);
    }
    void pagesFollowEachOther()
    {
        const BoardStore store(m_database);
        const auto first = store.lines({}, 2);
        QVERIFY_RESULT(first);
        QCOMPARE(found({}, 2), (QStringList{"A-5", "A-4"}));
        QCOMPARE(found({}, 2, &first->back()), (QStringList{"A-1", "A-2"}));
        const auto second = store.lines({}, 2, &first->back());
        QCOMPARE(found({}, 2, &second->back()), QStringList{"A-3"});
    }
    // Whatever happens to the orders, the tally says how many there are of each combination.
    void theTallyIsKept()
    {
        const BoardStore store(m_database);
        const auto orders = [&store](const BoardQuery &query) {
            qint64 found = 0;
            const auto grouped = store.grouped(query, QDate(2026, 3, 4));
            for (const BoardCombination &one : *grouped)
                found += one.orders;
            return found;
        };
        QCOMPARE(*store.wrongTallies(), 0);
        OrderState state = stateOf(samples[0]);
        state.stage = stageAt(Station::Calls);
        state.criterion = "calls";
        QVERIFY_RESULT(put(orderOf(samples[0]), state));
        QVERIFY_RESULT(put(orderOf(samples[0]), state)); // again the same
        QCOMPARE(*store.wrongTallies(), 0);
        QCOMPARE(store.tallied()->size(), 5U); // what has no order any more is gone
        for (const BoardFacetRow &row : boardFacetRows())
            for (const char *value : {"1", "calls", "NORTH", "K7", "accepted", "plant", ""}) {
                const BoardQuery query = with(row.facet, value);
                QCOMPARE(*store.count(query), qint64(found(query).size()));
                QCOMPARE(orders(query), qint64(found(query).size()));
            }
        QVERIFY_RESULT(editPast(
            m_database, "DELETE FROM board_tally WHERE id = (SELECT min(id) FROM board_tally)"));
        QCOMPARE(*store.wrongTallies(), 1);
    }
    void whatEachInstallerHasOnADay()
    {
        const BoardStore store(m_database);
        QCOMPARE(*store.loadOn(QDate(2026, 3, 2)), (QMap<QString, int>{{"K7", 1}, {"K8", 1}}));
        QCOMPARE(*store.loadOn(QDate(2026, 3, 1)), (QMap<QString, int>{{"", 1}})); // nobody's
        QCOMPARE(*store.loadOn(QDate(2026, 3, 5)), (QMap<QString, int>())); // it is completed
        QCOMPARE(*store.loadOn(QDate(2026, 3, 3)), (QMap<QString, int>()));
    }
    void theDaysOfAGroup()
    {
        const auto grouped = BoardStore(m_database).grouped({}, QDate(2026, 3, 5));
        QVERIFY_RESULT(grouped);
        qint64 past = 0, today = 0, soon = 0, week = 0;
        for (const BoardCombination &one : *grouped) {
            past += one.past ? one.orders : 0;
            today += one.today ? one.orders : 0;
            soon += one.soon ? one.orders : 0;
            week += one.thisWeek ? one.orders : 0;
        }
        QCOMPARE(past, 4);
        QCOMPARE(today, 1);
        QCOMPARE(soon, 1); // to Monday, 9 March
        QCOMPARE(week, 3); // from Monday, 2 March
    }
    void theStateFollowsTheOrder()
    {
        ServiceOrder order = orderOf(samples[0]);
        order.customer = "Zebra Works";
        QVERIFY_RESULT(jobs::addOrder(m_database, order));
        QVERIFY_RESULT(put(order, {.stage = stageAt(Station::Calls)}));
        QCOMPARE(found({.text = "zebra"}), QStringList{"A-1"});
        QCOMPARE(found({.text = "muller"}), QStringList());
        QCOMPARE((*BoardStore(m_database).row("A-1"))->stage, stageAt(Station::Calls));
        QCOMPARE(*BoardStore(m_database).row("A-9"), std::nullopt);
        // The text index agrees with the table that it is made of.
        if (m_database.isFile())
            QVERIFY_RESULT(m_database.connection().run(
                "INSERT INTO order_search (order_search, rank) VALUES ('integrity-check', 1)",
                "test"));
        order.number = "A-9";
        const auto unknown = put(order, {.stage = stageAt(Station::Loop)});
        QVERIFY(!unknown);
        QCOMPARE(unknown.error().code, ErrorCode::NotFound);
    }
    void anyPartOfANameFindsIt()
    {
        QVERIFY(rc::check("any part of a name of two or more characters finds the order", [this] {
            const Sample &sample =
                *rc::gen::elementOf(std::vector<Sample>(std::begin(samples), std::end(samples)));
            const QString name = QString::fromUtf8(sample.customer);
            const int from = *rc::gen::inRange(0, int(name.size()) - 1);
            const int length = *rc::gen::inRange(2, int(name.size()) - from + 1);
            BoardQuery query;
            query.text = name.mid(from, length);
            RC_ASSERT(found(query).contains(sample.number));
        }));
    }
};

QTEST_GUILESS_MAIN(BoardStoreTest)
#include "BoardStoreTest.moc"
