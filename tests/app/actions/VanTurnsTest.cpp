// An order that goes out more than once, bundles that overlap, and what two orders share: what a
// van tells reaches the order that came home with it, and no other.

#include "app/actions/Audit.h"
#include "db/OrderStore.h"
#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class VanTurnsTest : public QObject, OfficeWithTwoVans
{
    Q_OBJECT

    /// A change of the same line, after it.
    static OrderFields laterFields()
    {
        OrderFields fields = briFields();
        fields["order_number"] = "A-1009";
        fields["order_type"] = "change";
        fields["pair"] = "17-204";
        return fields;
    }
    static OrderFields besideFields()
    {
        OrderFields fields =
            otherBriFields("A-1003", "C-79", "17-300", "217-555-0163", "217-555-0164");
        fields["premises"] = briFields()["premises"];
        return fields;
    }
    static void change(Site &site, OrderFields fields, const QString &column, const QString &value)
    {
        const QString who = site.records->by();
        site.records->actAs("D4");
        fields[column] = value;
        site.records->changeWhatIsOut(true);
        good(putOrder(*site.records, fields, true));
        site.records->actAs(who);
    }
    static QJsonObject selfTest(const char *outcome)
    {
        return fact(2, "self_test", 8, {{"outcome", outcome}});
    }
    /// On which both orders of the premises were worked on.
    static QJsonObject visit()
    {
        return fact(160, "visit", 1,
                    {{"arrived", "2026-03-04T08:01:00-06:00"},
                     {"left", "2026-03-04T09:10:00-06:00"},
                     {"result", "worked"}});
    }
    /// The loop of the other order at the premises, by the same person with the same instrument.
    static QJsonObject loopBeside()
    {
        QJsonObject loop = briFacts()[2];
        loop["id"] = uuid(103);
        return loop;
    }

private slots:
    void init()
    {
        start();
        good(importOrders(*office().records, csv({briFields(), besideFields()}), {"o.csv"}));
    }
    void cleanup() { QCOMPARE(faults(), QStringList()); }

    /// What the office changed between two takings is the office's, as long as the van stays by its
    /// own.
    void takenTwiceWithAChangeBetween()
    {
        van().open(take(office(), {"A-1001"}));
        change(van(), briFields(), "contact", "217-555-0199");
        change(office(), briFields(), "pair", "17-299");
        van().open(take(office(), {"A-1001"}, "van-7", true));
        QCOMPARE(van().show().order.pair, QString("17-204"));
        van().record(briFields(), {safety(1, 5), briFacts()[2]});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        QCOMPARE(office().show().order.pair, QString("17-299"));
        QCOMPARE(office().show().order.contact, QString("217-555-0199"));
        QCOMPARE(conflicts("A-1001", ConflictCode::OrderChanged).size(), std::size_t(1));
        QVERIFY(!loopCounts("A-1001"));
    }

    /// A chain tells of another order of the circuit too: that one is ruled by it when it is home.
    void whatIsToldOfAnOrderThatIsNotHomeRulesNothing()
    {
        good(importOrders(*office().records, csv({laterFields()}), {"o.csv"}));
        van().open(take(office(), {"A-1001", "A-1009"}));
        office().record(laterFields(), {safety(201, 5), [] {
                                            QJsonObject loop = briFacts()[2];
                                            loop["id"] = uuid(203);
                                            return loop;
                                        }()});
        QVERIFY(loopCounts("A-1009"));
        van().record(briFields(), {safety(1, 5)});
        van().at("2026-03-04T21:00:00-06:00");
        change(van(), laterFields(), "pair", "17-299");
        good(bringBack(*van().records, {van().file("part.json"), {}, 1, true}));
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(contentOf(van().file("part-1.json")));
        QVERIFY(loopCounts("A-1009"));
        QVERIFY(good(auditDerived(*office().records)).empty());
        office().receive(contentOf(van().file("part-2.json")));
        QCOMPARE(office().show("A-1009").order.pair, QString("17-299"));
        QVERIFY(!loopCounts("A-1009"));
    }

    /// A self-test whose outcome stations tell otherwise rules nothing beside either.
    void aDisputedSelfTestCountsNowhere_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::newRow("one first") << false;
        QTest::newRow("other first") << true;
    }
    void aDisputedSelfTestCountsNowhere()
    {
        QFETCH(bool, otherFirst);
        takeTwice();
        office().record(besideFields(), {visit(), safety(101, 5), loopBeside()});
        QVERIFY(loopCounts("A-1003"));
        van().record(briFields(), {selfTest("passed")});
        other().record(briFields(), {selfTest("failed")});
        const QByteArray mine = van().bring(), theirs = other().bring();
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(otherFirst ? theirs : mine);
        QCOMPARE(loopCounts("A-1003"), !otherFirst);
        office().receive(otherFirst ? mine : theirs);
        QVERIFY(loopCounts("A-1003"));
        const auto open = conflicts("A-1001", ConflictCode::FactDiffers);
        QCOMPARE(open.size(), std::size_t(1));
        good(settleConflict(*office().records, open.front().conflict.id, "van-8", "asked"));
        QVERIFY(!loopCounts("A-1003"));
    }

    /// Struck out in a second bundle, a failed self-test holds nothing back in the other order.
    void aVoidOfWhatOrdersShareReachesThem()
    {
        van().open(take(office(), {"A-1001"}));
        office().record(besideFields(), {visit(), safety(101, 5), loopBeside()});
        van().record(briFields(), {selfTest("failed")});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring(true));
        QVERIFY(!loopCounts("A-1003"));
        van().records->actAs("S1");
        good(voidFact(*van().records, uuid(2), "the other set"));
        office().receive(van().bring());
        QVERIFY(loopCounts("A-1003"));
    }

    /// The first of two bundles comes last: by then its van knew what the other had done.
    void whoKnewTheOthersWorkInTheEnd_data()
    {
        QTest::addColumn<bool>("firstBundleFirst");
        QTest::newRow("in order") << true;
        QTest::newRow("the later one alone") << false;
    }
    void whoKnewTheOthersWorkInTheEnd()
    {
        QFETCH(bool, firstBundleFirst);
        takeTwice();
        van().record(briFields(), {safety(1, 5)});
        const QByteArray first = van().bring(true);
        other().record(briFields(), {briFacts()[3]});
        office().at("2026-03-05T08:00:00-06:00");
        if (firstBundleFirst)
            office().receive(first);
        office().receive(other().bring());
        QCOMPARE(conflicts("A-1001", ConflictCode::TwoStations).size(),
                 std::size_t(firstBundleFirst));
        van().open(take(office(), {"A-1001"}, "van-7", true));
        van().record(briFields(), {briFacts()[2]});
        office().receive(van().bring());
        office().receive(first);
        QVERIFY(conflicts("A-1001", ConflictCode::TwoStations).empty());
    }
};

QTEST_MAIN(VanTurnsTest)
#include "VanTurnsTest.moc"
