#include "app/actions/Plans.h"

#include "app/actions/Acceptance.h"
#include "app/actions/DayList.h"
#include "app/actions/History.h"
#include "app/actions/Import.h"
#include "app/actions/Orders.h"
#include "db/OrderStore.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class PlansTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    static OrderFields second()
    {
        return otherBriFields("A-1002", "C-78", "17-206", "217-555-0145", "217-555-0146");
    }
    ServiceOrder order(const QString &number) const
    {
        return OrderStore(m_records->database()).get(number)->order;
    }
    std::size_t events() const { return orderHistory(*m_records, "A-1001")->size(); }
    static QString words(const Result<PlanReport> &report)
    {
        return report ? QString() : report.error().text();
    }

private slots:
    void init()
    {
        m_records = office();
        QVERIFY(importOrders(*m_records, csv({briFields(), second()}), {"orders.csv"}));
    }

    void assignsSeveralAndKeepsTheFirstDay()
    {
        const auto done = assignOrders(
            *m_records, {{"A-1001", "A-1002"}, "Dana", QDate(2026, 3, 9), "customer is away"});
        QVERIFY2(done, qPrintable(words(done)));
        QCOMPARE(done->changed.size(), 2u);
        for (const char *number : {"A-1001", "A-1002"}) {
            const ServiceOrder now = order(number);
            QCOMPARE(now.installer, "Dana");
            QCOMPARE(now.dueDate, QDate(2026, 3, 9));
            QCOMPARE(now.firstDueDate, "2026-03-06");
            QCOMPARE(now.dueBecause, "customer is away");
        }
        // A second time the first day is the first still.
        QVERIFY(assignOrders(*m_records, {{"A-1001"}, "Dana", QDate(2026, 3, 12), "snow"}));
        QCOMPARE(order("A-1001").firstDueDate, "2026-03-06");
        QCOMPARE(order("A-1001").dueBecause, "snow");
        const auto again =
            assignOrders(*m_records, {{"A-1001"}, "Dana", QDate(2026, 3, 12), "snow"});
        QVERIFY(again && again->changed.empty());
        QCOMPARE(again->unchanged, QStringList{"A-1001"});
    }
    void anOrderThatHasTheDayKeepsItsReason()
    {
        QVERIFY(moveOrders(*m_records, {"A-1001"}, QDate(2026, 3, 9), "snow"));
        QVERIFY(assignOrders(*m_records, {{"A-1001"}, "Dana", QDate(2026, 3, 9), ""}));
        QCOMPARE(order("A-1001").dueBecause, "snow");
        const auto both = moveOrders(*m_records, {"A-1001", "A-1002"}, QDate(2026, 3, 9), "flood");
        QVERIFY2(both, qPrintable(words(both)));
        QCOMPARE(both->unchanged, QStringList{"A-1001"});
        QCOMPARE(order("A-1001").dueBecause, "snow");
        QCOMPARE(order("A-1002").dueBecause, "flood");
        QCOMPARE(order("A-1002").firstDueDate, "2026-03-06");
    }
    void nobodyUnknownIsPlannedFor()
    {
        const auto refused = changePlans(*m_records, {{"A-1001", {{"installer", "Nobody"}}}});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::NotFound);
        const auto rows = importPlans(
            *m_records, "order_number,column,value\nA-1001,installer,Nobody\nA-1002,installer,\n",
            {"plans.csv"});
        QVERIFY(rows);
        QCOMPARE(rows->refused, 1);
        QVERIFY(order("A-1001").installer != u"Nobody");
        QCOMPARE(order("A-1002").installer, "");
    }
    void oneRefusedRefusesAll()
    {
        QVERIFY(cancelOrder(*m_records, "A-1002", "not wanted"));
        const std::size_t before = events();
        const auto refused = assignOrders(*m_records, {{"A-1001", "A-1002"}, "Dana"});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("A-1002"), qPrintable(words(refused)));
        QCOMPARE(order("A-1001").installer, QString());
        QCOMPARE(events(), before);
        QCOMPARE(assignOrders(*m_records, {{"A-1001"}, "Nobody"}).error().code,
                 ErrorCode::NotFound);
        QCOMPARE(assignOrders(*m_records, {{"A-9"}, "Dana"}).error().code, ErrorCode::NotFound);
    }
    /// Each with its reason, so that one does not find them out one after the other.
    void everyRefusedOrderIsNamed()
    {
        QVERIFY(cancelOrder(*m_records, "A-1001", "not wanted"));
        QVERIFY(cancelOrder(*m_records, "A-1002", "not wanted"));
        const auto refused = assignOrders(*m_records, {{"A-1001", "A-1002", "A-9"}, "Dana"});
        QCOMPARE(words(refused), "Order A-1001 is cancelled and cannot be changed. "
                                 "Order A-1002 is cancelled and cannot be changed. "
                                 "There is no order \"A-9\".");
        QCOMPARE(words(resumeOrders(*m_records, {"A-1001", "A-1002"})),
                 "Order A-1001 is not on hold. Order A-1002 is not on hold.");
        QStringList many;
        for (int i = 1; i <= 10; ++i)
            many << QString("B-%1").arg(i);
        QVERIFY(words(assignOrders(*m_records, {many, "Dana"})).endsWith("\"B-8\". And 2 more."));
    }
    void whatCannotBeSet_data()
    {
        QTest::addColumn<QString>("column");
        QTest::addColumn<QString>("value");
        QTest::addColumn<ErrorCode>("code");
        QTest::newRow("no column") << "colour"
                                   << "red" << ErrorCode::BadInput;
        QTest::newRow("no terminal") << "dn_9"
                                     << "217-555-0147" << ErrorCode::BadInput;
        QTest::newRow("the number") << "order_number"
                                    << "A-7" << ErrorCode::Refused;
        QTest::newRow("no day") << "due_date"
                                << "soon" << ErrorCode::Refused;
        QTest::newRow("no first day") << "first_due_date"
                                      << "soon" << ErrorCode::Refused;
        QTest::newRow("no word") << "waiting_on"
                                 << "godot" << ErrorCode::Refused;
        QTest::newRow("no office") << "office"
                                   << "NOWHERE" << ErrorCode::Refused;
        QTest::newRow("broken line") << "remarks"
                                     << "a\nb" + QString(QChar(7)) << ErrorCode::Refused;
    }
    void whatCannotBeSet()
    {
        QFETCH(QString, column);
        QFETCH(QString, value);
        QFETCH(ErrorCode, code);
        const std::size_t before = events();
        const auto refused = changePlans(*m_records, {{"A-1001", {{column, value}}}});
        QVERIFY(!refused);
        QVERIFY2(refused.error().code == code, qPrintable(words(refused)));
        QCOMPARE(events(), before);
    }
    void aTerminalsColumnIsSet()
    {
        const auto done = changePlans(*m_records, {{"A-1001", {{"tei_2", "70"}}}});
        QVERIFY2(done, qPrintable(words(done)));
        QCOMPARE(order("A-1001").terminals[1].tei, "70");
        QCOMPARE(done->changed[0].columns["tei_2"].first, "auto");
    }
    /// What is set may hold the order, as any change of it may.
    void aTakenPairHoldsTheOrder()
    {
        const auto done = changePlans(*m_records, {{"A-1002", {{"pair", "17-204"}}}});
        QVERIFY2(done, qPrintable(words(done)));
        QCOMPARE(done->held, QStringList{"A-1002"});
        QVERIFY(!done->findings.empty());
        // And freed, it is held no longer.
        const auto freed = changePlans(*m_records, {{"A-1001", {{"pair", "17-300"}}}});
        QVERIFY2(freed, qPrintable(words(freed)));
        QVERIFY(!OrderStore(m_records->database()).get("A-1002")->held);
    }
    void onHoldAndOn()
    {
        QCOMPARE(holdOrders(*m_records, {"A-1001"}, WaitingOn::Permit, " ").error().code,
                 ErrorCode::Usage);
        QCOMPARE(resumeOrders(*m_records, {"A-1001"}).error().code, ErrorCode::Refused);
        QVERIFY(holdOrders(*m_records, {"A-1001"}, WaitingOn::Permit, "road is to be opened"));
        QVERIFY(order("A-1001").isOnHold());
        const auto jobs = jobsOfDay(*m_records, {}, QDate(2026, 3, 6));
        QVERIFY(jobs);
        const auto waits = std::ranges::find(*jobs, QString("A-1001"), &DayJob::order);
        QVERIFY(waits != jobs->end() && waits->waits);
        QVERIFY2(waits->next.startsWith("WAITS on permit: road is to be opened."),
                 qPrintable(waits->next));
        QVERIFY(resumeOrders(*m_records, {"A-1001"}));
        QVERIFY(!order("A-1001").isOnHold());
        QCOMPARE(order("A-1001").waitingBecause, QString());
    }
    void undone()
    {
        const auto before = order("A-1001");
        const auto done = assignOrders(
            *m_records, {{"A-1001", "A-1002"}, "Dana", QDate(2026, 3, 9), "customer is away"});
        QVERIFY(done);
        const std::size_t recorded = events();
        const auto back = undoPlan(*m_records, done->changed);
        QVERIFY2(back, qPrintable(words(back)));
        QCOMPARE(order("A-1001"), before);            // the first day too
        QCOMPARE(events(), recorded + 1);             // as a further event
        QVERIFY(undoPlan(*m_records, back->changed)); // and again
        QCOMPARE(order("A-1001").installer, "Dana");
        QCOMPARE(order("A-1001").firstDueDate, "2026-03-06");
        const auto verdict = verifyHistory(*m_records);
        QVERIFY(verdict && verdict->broken.empty());
    }
    void notUndoneOverAnother()
    {
        const auto done = assignOrders(*m_records, {{"A-1001", "A-1002"}, "Dana"});
        QVERIFY(done);
        QVERIFY(changePlans(*m_records, {{"A-1002", {{"installer", "D4"}}}}));
        const auto refused = undoPlan(*m_records, done->changed);
        QVERIFY(!refused);
        QCOMPARE(words(refused), "Order A-1002 was changed again since then: its installer is "
                                 "\"D4\" now. Nothing was taken back.");
        QCOMPARE(order("A-1001").installer, "Dana");
        // Another column does not matter.
        QVERIFY(changePlans(*m_records, {{"A-1002", {{"installer", "Dana"}, {"remarks", "dog"}}}}));
        QVERIFY(undoPlan(*m_records, done->changed));
        QCOMPARE(order("A-1002").remarks, "dog");
    }
    /// The same file once more, and the form, know nothing of the plan.
    void aFileDoesNotEndAPlan()
    {
        QVERIFY(holdOrders(*m_records, {"A-1001"}, WaitingOn::Permit, "road is to be opened"));
        const auto same = importOrders(*m_records, csv({briFields(), second()}), {"orders.csv"});
        QVERIFY(same);
        QCOMPARE(same->unchanged, 2);
        OrderFields fields = briFields();
        QVERIFY(putOrder(*m_records, fields, true)->unchanged);
        fields["due_date"] = "2026-03-10";
        QVERIFY(putOrder(*m_records, fields, true));
        QVERIFY(order("A-1001").isOnHold());
        QCOMPARE(order("A-1001").firstDueDate, "2026-03-06");
    }
    void onlyTheDesk()
    {
        m_records->actAs("K7"); // an installer
        const auto refused = assignOrders(*m_records, {{"A-1001"}, "K7"});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        const auto file =
            importPlans(*m_records, "order_number,column,value\nA-1001,installer,K7\n", {"p.csv"});
        QVERIFY(!file);
        QCOMPARE(order("A-1001").installer, QString());
        m_records->actAs("D4"); // a dispatcher
        QVERIFY(assignOrders(*m_records, {{"A-1001"}, "K7"}));
    }
    void fromAFile()
    {
        const auto report = importPlans(*m_records,
                                        "order_number,column,value\n"
                                        "A-1001,installer,Dana\n"
                                        "A-1002,colour,red\n"
                                        "A-1002,remarks,\"side door, ring twice\"\n"
                                        "A-9,installer,Dana\n",
                                        {"plan.csv"});
        QVERIFY2(report, report ? "" : qPrintable(report.error().text()));
        QCOMPARE(report->accepted, 2);
        QCOMPARE(report->refused, 2);
        QCOMPARE(report->findings[0].row, 3);
        QCOMPARE(report->findings[1].row, 5);
        QVERIFY(report->rejects.contains("A-1002,colour,red"));
        QCOMPARE(order("A-1001").installer, "Dana");
        QCOMPARE(order("A-1002").remarks, "side door, ring twice");
        ImportOptions all{"plan.csv"};
        all.allOrNothing = true;
        const auto none = importPlans(
            *m_records, "order_number,column,value\nA-1001,remarks,x\nA-9,remarks,y\n", all);
        QVERIFY(none && none->refusedWhole);
        QCOMPARE(order("A-1001").remarks, QString());
    }
};

QTEST_MAIN(PlansTest)
#include "PlansTest.moc"
