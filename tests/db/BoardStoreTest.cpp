#include "db/BoardStore.h"

#include "db/SqlCatalog.h"
#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

#include <algorithm>
#include <rapidcheck.h>
#include <sqlite3.h>

using namespace loopwright;
using jobs::changed;

namespace {

struct Sample
{
    const char *number, *due, *office, *installer;
    Stage stage;
    const char *customer;
    OrderOutcome outcome;
};

constexpr Sample samples[] = {
    {"A-1", "2026-03-02", "NORTH", "K7", stageAt(Station::Loop), "Müller Bakery",
     OrderOutcome::Incomplete},
    {"A-2", "2026-03-02", "NORTH", "K8", stageAt(Station::Loop), "Quiet Cafe",
     OrderOutcome::NotAccepted},
    {"A-3", "2026-03-05", "SOUTH", "K7", Stage::Done, "Harbour Inn", OrderOutcome::Accepted},
    {"A-4", "2026-03-01", "SOUTH", "", stageAt(Station::Calls), "Łódź Store",
     OrderOutcome::Incomplete},
    {"A-5", "2026-02-01", "NORTH", "K7", Stage::Done, "Quiet Garden", OrderOutcome::Accepted},
};

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
        for (const Sample &sample : samples) {
            const ServiceOrder order = orderOf(sample);
            QVERIFY_RESULT(jobs::addOrder(m_database, order, order.number == "A-4"));
            QVERIFY_RESULT(put(order, {sample.stage, sample.outcome, "because", false, 3, 1}));
        }
    }
    /// Whatever is due before, but not of what is done.
    void openHazardsStandFirst()
    {
        for (const Sample &sample : samples) {
            const QString number = sample.number;
            if (number == u"A-2" || number == u"A-3" || number == u"A-5")
                QVERIFY_RESULT(
                    put(orderOf(sample), {sample.stage, sample.outcome, "because", true, 3, 1}));
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
        BoardQuery hazards;
        hazards.hazard = true;
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
        row("stage", {.stage = stageAt(Station::Loop)}, {"A-1", "A-2"});
        row("office", {.office = "SOUTH"}, {"A-4", "A-3"});
        row("installer", {.installer = "K7"}, {"A-5", "A-1", "A-3"});
        row("outcome", {.outcome = OrderOutcome::Accepted}, {"A-5", "A-3"});
        row("due from", {.dueFrom = QDate(2026, 3, 2)}, {"A-1", "A-2", "A-3"});
        row("due before", {.dueBefore = QDate(2026, 3, 2)}, {"A-5", "A-4"});
        row("late", {.dueBefore = QDate(2026, 3, 3), .notDone = true}, {"A-4", "A-1", "A-2"});
        row("stage and office", {.stage = Stage::Done, .office = "NORTH"}, {"A-5"});
        row("nothing", {.stage = stageAt(Station::Safety)}, {});
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
        both.stage = stageAt(Station::Loop);
        row("text and stage", both, {"A-2"});
    }
    void filters()
    {
        QFETCH(BoardQuery, query);
        QFETCH(QStringList, numbers);
        QCOMPARE(found(query), numbers);
        QCOMPARE(*BoardStore(m_database).count(query), qint64(numbers.size()));
        const auto ids = BoardStore(m_database).ids(query);
        QVERIFY_RESULT(ids);
        QStringList byId;
        for (const qint64 id : *ids)
            byId << (*BoardStore(m_database).line(id))->order;
        QCOMPARE(byId, numbers);
    }
    void aLineSaysAll()
    {
        const auto lines = BoardStore(m_database).lines({.stage = stageAt(Station::Calls)});
        QVERIFY_RESULT(lines);
        const BoardRow &line = lines->front();
        QCOMPARE(line.order, "A-4");
        QCOMPARE(line.circuit, "C-4");
        QCOMPARE(line.customer, "Łódź Store");
        QCOMPARE(line.premises, "12 Mill Lane");
        QCOMPARE(line.office, "SOUTH");
        QCOMPARE(line.installer, "");
        QCOMPARE(line.reason, "because");
        QCOMPARE(line.kind, LineKind::Bri);
        QCOMPARE(line.outcome, OrderOutcome::Incomplete);
        QCOMPARE(line.due, QDate(2026, 3, 1));
        QCOMPARE(line.status, OrderStatus::Open);
        QVERIFY(line.held);
        QCOMPARE(line.facts, 3);
        QCOMPARE(line.runs, 1);
    }
    // However many orders there are: a page of one filter comes out of an index in its order.
    void aPageIsNotSorted_data()
    {
        QTest::addColumn<QByteArray>("part");
        QTest::addColumn<QByteArray>("index");
        QTest::newRow("all") << QByteArray() << QByteArray("order_state_due");
        for (const char *part : {"stage", "office", "installer"})
            QTest::newRow(part) << QByteArray(part) << QByteArray("order_state_") + part;
    }
    void aPageIsNotSorted()
    {
        QFETCH(QByteArray, part);
        QFETCH(QByteArray, index);
        const std::string label = "board." + part.toStdString();
        std::vector<std::string_view> parts{"board.sorted"};
        if (!part.isEmpty())
            parts.insert(parts.begin(), label);
        const auto plan = m_database.connection().lend(
            "plan", "EXPLAIN QUERY PLAN " + SqlCatalog::embedded().compose("board.lines", parts));
        QVERIFY_RESULT(plan);
        QByteArray steps;
        while (sqlite3_step((*plan)->handle) == SQLITE_ROW)
            steps += reinterpret_cast<const char *>(sqlite3_column_text((*plan)->handle, 3)) +
                     QByteArray("; ");
        QVERIFY2(steps.contains(index) && !steps.contains("TEMP"), steps.constData());
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
    // The count in a filter is the count that choosing it will show.
    void aCountIsWhatChoosingItShows()
    {
        const std::vector<BoardQuery> queries{{},
                                              {.stage = stageAt(Station::Loop)},
                                              {.office = "NORTH"},
                                              {.installer = "K7", .notDone = true}};
        for (const BoardQuery &query : queries) {
            using Choose = void (*)(BoardQuery &, const QString &);
            for (const auto &[kind, choose] :
                 {std::pair<BoardStore::Tally, Choose>(BoardStore::Tally::Stage,
                                                       [](BoardQuery &q, const QString &value) {
                                                           q.stage = fromText<Stage>(value);
                                                       }),
                  std::pair<BoardStore::Tally, Choose>(
                      BoardStore::Tally::Office,
                      [](BoardQuery &q, const QString &value) { q.office = value; }),
                  std::pair<BoardStore::Tally, Choose>(
                      BoardStore::Tally::Installer,
                      [](BoardQuery &q, const QString &value) { q.installer = value; })}) {
                const auto counts = BoardStore(m_database).tally(query, kind);
                QVERIFY_RESULT(counts);
                qint64 sum = 0;
                for (auto it = counts->begin(); it != counts->end(); ++it) {
                    BoardQuery chosen = query;
                    choose(chosen, it.key());
                    if (!it.key().isEmpty()) // an empty filter means any
                        QCOMPARE(qint64(found(chosen).size()), it.value());
                    sum += it.value();
                }
                BoardQuery without = query;
                choose(without, {});
                QCOMPARE(sum, qint64(found(without).size()));
            }
        }
        QCOMPARE(*BoardStore(m_database).tally({}, BoardStore::Tally::Stage),
                 (QMap<QString, qint64>{{"calls", 1}, {"done", 2}, {"loop", 2}}));
    }
    void theStateFollowsTheOrder()
    {
        ServiceOrder order = orderOf(samples[0]);
        order.customer = "Zebra Works";
        QVERIFY_RESULT(jobs::addOrder(m_database, order));
        QVERIFY_RESULT(
            put(order, {stageAt(Station::Calls), OrderOutcome::Incomplete, "", false, 4, 2}));
        QCOMPARE(found({.text = "zebra"}), QStringList{"A-1"});
        QCOMPARE(found({.text = "muller"}), QStringList());
        QCOMPARE(*BoardStore(m_database).stateOf("A-1"),
                 std::optional(OrderState{stageAt(Station::Calls), OrderOutcome::Incomplete, "",
                                          false, 4, 2}));
        QCOMPARE(*BoardStore(m_database).stateOf("A-9"), std::nullopt);
        // The text index agrees with the table that it is made of.
        QVERIFY_RESULT(m_database.connection().run(
            "INSERT INTO order_search (order_search, rank) VALUES ('integrity-check', 1)", "test"));
        order.number = "A-9";
        const auto unknown =
            put(order, {stageAt(Station::Loop), OrderOutcome::Incomplete, "", 0, 0});
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
