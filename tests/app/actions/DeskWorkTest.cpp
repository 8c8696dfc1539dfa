#include "app/actions/DeskWork.h"

#include "app/actions/History.h"
#include "app/actions/Import.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class DeskWorkTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    DeskWork jumper(const QStringList &orders) const
    {
        return {orders, {DeskWhat::JumperRun, "S. Lind", {}}, m_records->now()};
    }
    std::size_t events(const QString &order) const
    {
        return orderHistory(*m_records, order)->size();
    }
    /// The desk facts of an order that count.
    std::vector<Fact> deskFacts(const QString &order) const
    {
        std::vector<Fact> found;
        const auto view = showOrder(*m_records, order);
        for (const FactView &each : view->facts)
            if (each.fact.as<DeskFact>() && !each.voided)
                found.push_back(each.fact);
        return found;
    }
    template<class T>
    static QString words(const Result<T> &result)
    {
        return result ? QString() : result.error().message;
    }
    static OrderFields other(int i, const QString &related)
    {
        const QString n = QString::number(i);
        OrderFields fields = otherBriFields("A-100" + n, "C-7" + n, "17-21" + n, "217-555-014" + n,
                                            "217-555-015" + n);
        fields["related_order"] = related;
        return fields;
    }

private slots:
    void init()
    {
        m_records = office();
        const auto taken = importOrders(
            *m_records, csv({briFields(), other(5, "A-1001"), other(6, "A-1005"), other(7, {})}),
            {"orders.csv"});
        QVERIFY(taken && taken->refused == 0);
    }

    void ofSeveralOrdersEachAnEvent()
    {
        const std::size_t before = events("A-1005");
        const auto done = recordDeskWork(*m_records, jumper({"A-1001", "A-1005"}));
        QVERIFY2(done, qPrintable(words(done)));
        QCOMPARE(done->size(), 2);
        QCOMPARE(events("A-1005"), before + 1);
        const auto facts = deskFacts("A-1005");
        QCOMPARE(facts.size(), 1u);
        QCOMPARE(facts[0].as<DeskFact>()->what, DeskWhat::JumperRun);
        QCOMPARE(facts[0].as<DeskFact>()->by, "S. Lind");
        QCOMPARE(facts[0].at, m_records->now());
        const auto verdict = verifyHistory(*m_records);
        QVERIFY(verdict && verdict->broken.empty());
    }
    void allOrNone()
    {
        QVERIFY(cancelOrder(*m_records, "A-1005", "not wanted"));
        const auto refused =
            recordDeskWork(*m_records, jumper({"A-1001", "A-1005", "A-9", "A-1006"}));
        QCOMPARE(words(refused), "Order A-1005 is cancelled: nothing is done for it. "
                                 "There is no order \"A-9\".");
        QVERIFY(deskFacts("A-1001").empty());
        DeskWork late = jumper({"A-1001"});
        late.at = *Moment::parse(u"2026-04-05T12:00:00-06:00");
        QVERIFY(!recordDeskWork(*m_records, late));
        QVERIFY(deskFacts("A-1001").empty());
    }
    void takenBack()
    {
        const auto done = recordDeskWork(*m_records, jumper({"A-1001", "A-1005"}));
        QVERIFY(done);
        const std::size_t before = events("A-1001");
        const auto back = voidDeskWork(*m_records, *done, "taken back");
        QVERIFY2(back, qPrintable(words(back)));
        QVERIFY(deskFacts("A-1001").empty() && deskFacts("A-1005").empty());
        QCOMPARE(events("A-1001"), before + 1);
        const auto again = voidDeskWork(*m_records, *done, "taken back");
        QCOMPARE(words(again), "What was recorded of order A-1001 is void already. "
                               "What was recorded of order A-1005 is void already. "
                               "Nothing was taken back.");
        QCOMPARE(words(voidDeskWork(*m_records, *done, " ")), "A fact is voided with a reason.");
        const auto verdict = verifyHistory(*m_records);
        QVERIFY(verdict && verdict->broken.empty());
    }
    void whatIsReleasedTogether()
    {
        const QStringList all{"A-1001", "A-1005", "A-1006"};
        for (const QString &from : all) {
            QStringList others = all;
            others.removeAll(from);
            QStringList found = relatedOrders(*m_records, {from}).value_or(QStringList());
            found.sort();
            QCOMPARE(found, others);
        }
        QCOMPARE(*relatedOrders(*m_records, {"A-1001", "A-1006"}), QStringList{"A-1005"});
        QCOMPARE(*relatedOrders(*m_records, {"A-1007"}), QStringList());
        // What has ended is not released any more, and leads on to the others.
        QVERIFY(cancelOrder(*m_records, "A-1005", "not wanted"));
        QCOMPARE(*relatedOrders(*m_records, {"A-1006"}), QStringList{"A-1001"});
    }
};

QTEST_MAIN(DeskWorkTest)
#include "DeskWorkTest.moc"
