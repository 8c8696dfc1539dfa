#include "app/actions/Board.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Audit.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/FoundKinds.h"
#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "tests/support/Office.h"

#include <QGuiApplication>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

// It is Thursday, 5 March 2026.
class BoardTest : public QObject
{
    Q_OBJECT
    std::unique_ptr<Records> m_records;

    static OrderFields fields(const QString &number, int n, const OrderFields &other)
    {
        OrderFields made =
            otherBriFields(number, QString("C-10%1").arg(n), QString("9-1%1").arg(n),
                           QString("217-555-011%1").arg(n), QString("217-555-012%1").arg(n));
        for (auto it = other.begin(); it != other.end(); ++it)
            made[it.key()] = it.value();
        return made;
    }
    void record(const OrderFields &order, const QList<QJsonObject> &facts)
    {
        const auto report = recordFile(*m_records, recordBytes(order, facts), "job.json");
        QVERIFY2(report, report ? "" : qPrintable(report.error().text()));
    }
    BoardFilter filter(BoardFacet facet, const QString &value) const
    {
        BoardFilter made;
        made.facets.insert(facet, value);
        return made;
    }
    QStringList found(const BoardFilter &filter) const
    {
        QStringList numbers;
        const auto rows = boardRows(*m_records, filter);
        if (!rows)
            return {rows.error().text()};
        for (const BoardRow &row : *rows)
            numbers << row.order;
        return numbers;
    }
    BoardRow row(const QString &order) const
    {
        const auto rows = boardRows(*m_records, {});
        for (const BoardRow &each : *rows)
            if (each.order == order)
                return each;
        return {};
    }

private slots:
    void init()
    {
        m_records = office();
        const OrderFields accepted = [] {
            OrderFields made = briFields();
            made["due_date"] = "2026-03-04";
            return made;
        }();
        const OrderFields referred =
            fields("B-1", 1, {{"due_date", "2026-03-03"}, {"installer", "K7"}});
        const QList<OrderFields> orders{
            accepted,
            analogFields(),
            referred,
            fields("B-2", 2, {{"due_date", "2026-03-05"}, {"installer", "D4"}}),
            fields("B-3", 3, {{"due_date", "2026-03-02"}, {"installer", "K7"}}),
            fields("B-4", 4, {{"order_type", "record_only"}, {"due_date", "2026-03-02"}}),
            fields("B-5", 5, {{"due_date", "2026-03-09"}, {"customer", "Mill Press"}})};
        const auto report = importOrders(*m_records, csv(orders), {"orders.csv"});
        QVERIFY2(report && report->refused == 0, report ? report->rejects : "refused");
        record(accepted, briFacts());
        QList<QJsonObject> analog = analogFacts();
        for (QJsonObject &fact : analog) // with ids of their own
            fact.insert("id", QString("11111111" + fact["id"].toString().mid(8)));
        record(analogFields(), analog);
        record(referred, {QJsonObject{{"id", "00000000-0000-4000-8000-0000000000a1"},
                                      {"kind", "referred"},
                                      {"at", "2026-03-05T08:00:00-06:00"},
                                      {"to", "Cable desk"},
                                      {"waiting_on", "plant"}}});
        const auto issued = issueCertificate(*m_records, {"A-2001", Paper::A4, {}, {}});
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        QVERIFY(cancelOrder(*m_records, "B-3", "the customer moved"));
    }

    /// Circuits by what they are called, the one named whole first; people who have an order.
    void aSearchNamesCircuitsAndPeople()
    {
        const auto circuits = [this](const QString &text) {
            QStringList numbers;
            const auto found = foundKinds(*m_records, text);
            for (const FoundCircuit &each : found->circuits)
                numbers << each.number;
            return numbers;
        };
        QCOMPARE(circuits("c-10"), (QStringList{"C-101", "C-102", "C-103"})); // of five
        QCOMPARE(circuits("c104"), QStringList{"C-104"});
        QCOMPARE(circuits("217-555-0112"), QStringList{"C-102"}); // its number
        QCOMPARE(circuits("9-15"), QStringList{"C-105"});         // its pair
        QCOMPARE(circuits("mill press"), QStringList());          // whose it is
        QCOMPARE(circuits(" "), QStringList());
        const auto people = foundKinds(*m_records, "carver")->people;
        QCOMPARE(people.size(), 1);
        QCOMPARE(people.front().key, QString("K7"));
        QVERIFY(foundKinds(*m_records, "sam holt")->people.isEmpty()); // has none
    }

    void whatIsAcceptedIsNotLateButLacksItsPaper()
    {
        const QDate today(2026, 3, 5);
        BoardFilter late;
        late.due = DueFilter::Late;
        QCOMPARE(found(late), QStringList{"B-1"}); // not A-1001, B-3 nor B-4
        QCOMPARE(found(filter(BoardFacet::Paper, "1")), QStringList{"A-1001"});
        QVERIFY(row("A-1001").paper && !row("A-1001").isLate(today));
        QVERIFY(row("B-1").isLate(today));
        QVERIFY(!row("A-2001").paper); // issued
        QVERIFY(!row("B-4").paper);    // of a type without one
        const auto issued = issueCertificate(*m_records, {"A-1001", Paper::A4, {}, {}});
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        QCOMPARE(found(filter(BoardFacet::Paper, "1")), QStringList());
    }
    void theFirstDateIsMissedWhenItHasPassed()
    {
        BoardFilter missed;
        missed.due = DueFilter::Missed;
        // Open ones of a passed date, accepted or not; none that was cancelled.
        const QStringList byDue = found(missed);
        QCOMPARE(byDue, (QStringList{"B-4", "B-1", "A-1001"}));
        for (const QString &order : byDue)
            QVERIFY(row(order).isMissed(QDate(2026, 3, 5)));
        QVERIFY(!row("B-3").isMissed(QDate(2026, 3, 5))); // cancelled
        QVERIFY(!row("B-2").isMissed(QDate(2026, 3, 5))); // due today
        // Another day does not mend it, and the first one is kept, however often it is moved.
        QVERIFY(assignOrders(*m_records, {{"B-1"}, "K7", QDate(2026, 3, 10), "no access"}));
        QVERIFY(assignOrders(*m_records, {{"B-1"}, "K7", QDate(2026, 3, 12), "no access"}));
        QCOMPARE(row("B-1").promised, QDate(2026, 3, 3));
        QVERIFY(found(missed).contains("B-1"));
        // Moved before its first date has passed, it is missed only once that has.
        QVERIFY(assignOrders(*m_records, {{"B-5"}, "K7", QDate(2026, 3, 20), "asked for"}));
        QVERIFY(!found(missed).contains("B-5"));
        QVERIFY(row("B-5").isMissed(QDate(2026, 3, 10)));
        // What is completed has missed its date only if it was moved.
        QVERIFY(completeOrder(*m_records, "B-4"));
        QVERIFY(!found(missed).contains("B-4"));
    }
    void theFirstOpenCriterionIsTheOneOfTheReason()
    {
        const auto rows = boardRows(*m_records, {});
        for (const BoardRow &row : *rows) {
            const auto decision = decideOrder(*m_records, row.order);
            QString first;
            for (const CriterionOutcome outcome :
                 {CriterionOutcome::NotMet, CriterionOutcome::Missing})
                for (const CriterionResult &each : decision->criteria)
                    if (first.isEmpty() && each.open() && each.outcome == outcome)
                        first = each.key;
            QCOMPARE(row.criterion, first);
            QCOMPARE(row.criterion.isEmpty(), row.reason.isEmpty());
        }
        QCOMPARE(row("B-2").criterion, "loop");
        QCOMPARE(found(filter(BoardFacet::Criterion, "loop")),
                 (QStringList{"B-3", "B-1", "B-2", "B-5"}));
    }
    void aReferralSaysOnWhomItWaitsUntilSomebodyCame()
    {
        QCOMPARE(row("B-1").waitingOn, "plant");
        QCOMPARE(found(filter(BoardFacet::WaitingOn, "plant")), QStringList{"B-1"});
        record(fields("B-1", 1, {}), {QJsonObject{{"id", "00000000-0000-4000-8000-0000000000a2"},
                                                  {"kind", "visit"},
                                                  {"at", "2026-03-05T10:00:00-06:00"},
                                                  {"arrived", "2026-03-05T09:30:00-06:00"}}});
        QCOMPARE(row("B-1").waitingOn, "");
        QCOMPARE(found(filter(BoardFacet::WaitingOn, "plant")), QStringList());
    }
    void aHoldSaysOnWhomItWaits()
    {
        QVERIFY(holdOrders(*m_records, {"B-2"}, WaitingOn::Permit, "the street is closed"));
        QCOMPARE(row("B-2").waitingOn, "permit");
        QCOMPARE(found(filter(BoardFacet::WaitingOn, "permit")), QStringList{"B-2"});
        QVERIFY(holdOrders(*m_records, {"B-1"}, WaitingOn::Weather, "ice on the poles"));
        QCOMPARE(row("B-1").waitingOn, "weather"); // before the referral
        QVERIFY(resumeOrders(*m_records, {"B-1", "B-2"}));
        QCOMPARE(row("B-1").waitingOn, "plant");
        QCOMPARE(row("B-2").waitingOn, "");
        // What has ended waits on nobody.
        QVERIFY(holdOrders(*m_records, {"B-2"}, WaitingOn::Permit, "the street is closed"));
        QVERIFY(cancelOrder(*m_records, "B-2", "not wanted any more"));
        QCOMPARE(row("B-2").waitingOn, "");
        QCOMPARE(found(filter(BoardFacet::WaitingOn, "permit")), QStringList());
    }
    void installersHaveTheirNames()
    {
        QCOMPARE(row("B-1").installerName, "Kim Carver");
        QCOMPARE(boardCounts(*m_records, {})->installerNames.value("D4"), "Lee Ward");
    }

    void ordersAreFoundByTheNameOfTheirInstaller()
    {
        const auto found = [this](const QString &text) {
            BoardFilter filter;
            filter.text = text;
            filter.sort = BoardSort::Number;
            return this->found(filter);
        };
        QCOMPARE(found("carver"), (QStringList{"B-1", "B-3"}));
        QCOMPARE(found("Kim Carver"), (QStringList{"B-1", "B-3"}));
        QCOMPARE(found("arv"), (QStringList{"B-1", "B-3"})); // any part of it
        QCOMPARE(found("ward b-2"), QStringList{"B-2"});     // another word is in the order
        QCOMPARE(found("carver b-2"), QStringList());        // whose installer he is not
        QCOMPARE(found("carver ward"), QStringList());       // an order has one
        QCOMPARE(found("kim 12 mill"), (QStringList{"B-1", "B-3"}));
        QCOMPARE(found("mill"), (QStringList{"A-1001", "B-1", "B-2", "B-3", "B-4", "B-5"}));
        QVERIFY(changePlans(*m_records, {{"B-5", {{"contact", "Ada Carver"}}}}));
        QCOMPARE(found("carver"), (QStringList{"B-1", "B-3", "B-5"})); // by its text too
        QVERIFY(changePlans(*m_records, {{"B-1", {{"contact", "Ada Carver"}}}}));
        QCOMPARE(found("carver"), (QStringList{"B-1", "B-3", "B-5"})); // once
    }

    // The count shown is the count that choosing gives, whatever else is chosen.
    void everyCountIsWhatChoosingItShows_data()
    {
        QTest::addColumn<BoardFilter>("ground");
        const auto row = [](const char *name, const BoardFilter &filter) {
            QTest::newRow(name) << filter;
        };
        row("nothing chosen", {});
        row("open", filter(BoardFacet::Open, "1"));
        row("an installer", filter(BoardFacet::Installer, "K7"));
        row("nobody", filter(BoardFacet::Installer, ""));
        row("a criterion", filter(BoardFacet::Criterion, "loop"));
        row("paper", filter(BoardFacet::Paper, "1"));
        BoardFilter two = filter(BoardFacet::Open, "1");
        two.facets.insert(BoardFacet::Outcome, "incomplete");
        row("open and incomplete", two);
        row("none such", filter(BoardFacet::Office, "SOUTH"));
        BoardFilter days;
        days.dueBefore = QDate(2026, 3, 6);
        row("before a day", days);
        for (const DueFilter due : {DueFilter::Late, DueFilter::AtRisk, DueFilter::Today,
                                    DueFilter::ThisWeek, DueFilter::Missed}) {
            BoardFilter when = filter(BoardFacet::Open, "1");
            when.due = due;
            row(qPrintable(toText(due)), when);
            when.text = "b";
            row(qPrintable("b, " + toText(due)), when);
        }
        for (const char *typed : {"b", "mill", "mill press", "nobody", "carver", "kim carver",
                                  "mill carver", "b carver", "carver ward"}) {
            BoardFilter text = filter(BoardFacet::Open, "1");
            text.text = typed;
            row(typed, text);
        }
    }
    void everyCountIsWhatChoosingItShows()
    {
        QFETCH(BoardFilter, ground);
        const auto counts = boardCounts(*m_records, ground);
        QVERIFY2(counts, counts ? "" : qPrintable(counts.error().text()));
        QCOMPARE(counts->total, int(found(ground).size()));
        QCOMPARE(counts->all, 7);
        for (const auto &[facet, code] : EnumCodes<BoardFacet>::table) {
            QSet<QString> values{"1", "loop", "K7", "", "plant", "open", "done"};
            for (const auto &[value, count] : counts->facets.value(facet).toStdMap())
                values.insert(value);
            for (const QString &value : values) {
                BoardFilter chosen = ground;
                chosen.facets.insert(facet, value);
                const bool flag = facet == BoardFacet::Open || facet == BoardFacet::Paper ||
                                  facet == BoardFacet::Hazard;
                if (flag && value != u"1")
                    continue;
                QVERIFY2(counts->facets.value(facet).value(value) == int(found(chosen).size()),
                         qPrintable(QString("%1 = %2: %3 said, %4 found")
                                        .arg(code, value)
                                        .arg(counts->facets.value(facet).value(value))
                                        .arg(found(chosen).join(' '))));
            }
        }
        for (const auto &[due, code] : EnumCodes<DueFilter>::table) {
            BoardFilter chosen = ground;
            chosen.due = due;
            QVERIFY2(counts->due.value(due) == int(found(chosen).size()), code);
        }
    }
    void aPageFollowsItsOrder()
    {
        for (const auto &[sort, code] : EnumCodes<BoardSort>::table) {
            BoardFilter filter;
            filter.sort = sort;
            const QStringList all = found(filter);
            QCOMPARE(all.size(), 7);
            filter.after = all[3];
            filter.limit = 2;
            QCOMPARE(found(filter), all.mid(4, 2));
        }
        BoardFilter unknown;
        unknown.after = "Z-1";
        const auto rows = boardRows(*m_records, unknown);
        QVERIFY(!rows && rows.error().code == ErrorCode::NotFound);
    }
    void theAuditFindsTheBoardAsItIs()
    {
        const auto faults = auditDerived(*m_records);
        QVERIFY(faults);
        QStringList told;
        for (const DerivedFault &fault : *faults)
            told << fault.what;
        QCOMPARE(told.join("; "), QString());
    }
};

QTEST_MAIN(BoardTest)
#include "BoardTest.moc"
