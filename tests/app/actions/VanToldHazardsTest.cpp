// A dangerous voltage goes along with whatever order goes to its pair or premises, and whoever
// hands out, opens or receives reads of it first.

#include "app/actions/Acceptance.h"
#include "app/actions/HazardRegister.h"
#include "tests/support/OfficeOfHazards.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class VanToldHazardsTest : public QObject, OfficeOfHazards
{
    Q_OBJECT

    static QJsonObject safetyIn(const Decision &decision)
    {
        const QJsonArray criteria = decision.toJson().value("criteria").toArray();
        for (const QJsonValue &each : criteria)
            if (each["key"].toString() == "safety")
                return each.toObject();
        return {};
    }
    /// Of what is to be read before anybody works.
    static QStringList codesOf(const TakenBundle &taken)
    {
        QStringList codes;
        for (const JoinedOrder &order : taken.orders)
            for (const Finding &finding : order.findings)
                codes << finding.code;
        return codes;
    }

private slots:
    void init() { startWithOrders(); }
    void cleanup() { QCOMPARE(faults(), QStringList()); }

    /// The van has not the order that read it.
    void aHazardGoesAlongWithAnotherOrderOfThePair()
    {
        office().record(briFields(), {safety(1, 5, 88.0)});
        const TakenAlong taken = good(takeInto(office(), "out.json", {"A-1002"}));
        QCOMPARE(taken.warnings.size(), std::size_t(1));
        QCOMPARE(taken.warnings[0].order, QString("A-1002"));
        QCOMPARE(taken.warnings[0].finding.code, QString("hazard_open"));
        const TakenBundle opened = van().open(contentOf(taken.files[0]));
        QCOMPARE(codesOf(opened), QStringList("hazard_open"));
        const Judged judged = van().show("A-1002").judged;
        QCOMPARE(judged.cards.open().size(), std::size_t(1));
        QVERIFY(judged.cards.open()[0].isOfPair);
        QCOMPARE(judged.decision.criterion("safety")->outcome, CriterionOutcome::NotMet);
        const auto rows = good(boardRows(*van().records, {}));
        QVERIFY(rows.size() == 1 && rows[0].hazard);
        QVERIFY2(rows[0].reason.contains("A-1001"), qPrintable(rows[0].reason));
        QCOMPARE(van().faults(), QStringList());
        const auto listed = good(hazardRegister(*van().records, true));
        QCOMPARE(listed.size(), std::size_t(1));
        QCOMPARE(listed[0].order, QString("A-1001"));
        QCOMPARE(listed[0].pair, QString("17-204"));
        // What is delivered twice tells it twice.
        QCOMPARE(codesOf(van().open(contentOf(taken.files[0]))), QStringList("hazard_open"));
    }
    void aHazardNearbyGoesAlong()
    {
        office().record(briFields(), {safety(1, 5, 88.0)});
        van().open(take(office(), {"A-1003"}));
        const auto open = van().show("A-1003").judged.cards.open();
        QCOMPARE(open.size(), std::size_t(1));
        QVERIFY(!open[0].isOfPair);
    }
    /// How it was closed comes with the next bundle; an older one that is opened late does not open
    /// it again.
    void theClosingGoesAlongToo()
    {
        office().record(briFields(), {safety(1, 5, 88.0)});
        const QByteArray before = take(office(), {"A-1002"});
        office().record(briFields(), {closing(30, 20), safety(31, 25)});
        const QByteArray after = take(office(), {"A-1002"});
        QCOMPARE(codesOf(van().open(after)), QStringList());
        van().open(before);
        const OrderView there = van().show("A-1002"), here = office().show("A-1002");
        QCOMPARE(there.judged.cards.hazards().size(), std::size_t(1));
        QVERIFY(there.judged.cards.open().empty());
        QCOMPARE(there.decision.criterion("safety")->outcome,
                 here.decision.criterion("safety")->outcome);
        QCOMPARE(safetyIn(there.decision), safetyIn(here.decision));
    }
    void theVanClosesAHazardThatItWasTold()
    {
        office().record(briFields(), {safety(1, 5, 88.0)});
        van().open(take(office(), {"A-1002"}));
        van().record(samePairFields(), {closing(30, 20), safety(31, 25)});
        QVERIFY(van().show("A-1002").judged.cards.open().empty());
        office().at("2026-03-05T08:00:00-06:00");
        QCOMPARE(codesOf(office().receive(van().bring())), QStringList());
        for (const char *order : {"A-1001", "A-1002", "A-1003"}) {
            QVERIFY2(office().show(order).judged.cards.open().empty(), order);
            QVERIFY2(!hazardOnBoard(order), order);
        }
    }
    /// A pair of another order and other premises: the van has it in case it goes there.
    void aVanThatGoesToAnotherPairIsTold()
    {
        OrderFields elsewhere =
            otherBriFields("A-1006", "C-82", "17-310", "217-555-0167", "217-555-0168");
        elsewhere["premises"] = "9 Quarry Lane";
        good(putOrder(*office().records, elsewhere, false));
        office().record(elsewhere, {safety(1, 5, 88.0)});
        van().open(take(office(), {"A-1001"}));
        QVERIFY(van().show("A-1001").judged.cards.open().empty());
        OrderFields fields = briFields();
        fields["pair"] = "17-310";
        van().records->actAs("D4");
        good(putOrder(*van().records, fields, true));
        const auto open = van().show("A-1001").judged.cards.open();
        QVERIFY(open.size() == 1 && open[0].isOfPair);
    }
    void anotherVanAndAnotherPairAreTold()
    {
        van().open(take(office(), {"A-1001"}));
        swapInOffice("17-299");
        const TakenAlong taken = good(takeInto(office(), "out.json", {"A-1001"}, "van-8", true));
        QCOMPARE(taken.warnings.size(), std::size_t(1));
        QVERIFY(taken.warnings[0].finding.reason.english().contains("van-7"));
        QCOMPARE(codesOf(other().open(contentOf(taken.files[0]))), QStringList("order_out"));
        const TakenAlong again = good(takeInto(office(), "out.json", {"A-1001"}, "van-7", true));
        QCOMPARE(again.warnings.size(), std::size_t(2));
        QCOMPARE(again.warnings[0].finding.code, QString("pair_changed"));
        QCOMPARE(codesOf(van().open(contentOf(again.files[0]))),
                 (QStringList{"pair_changed", "order_out"}));
    }
    void whatComesHomeWithAHazardSaysSo()
    {
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), {safety(1, 5, 88.0)});
        office().at("2026-03-05T08:00:00-06:00");
        const QByteArray back = van().bring();
        QCOMPARE(codesOf(office().receive(back)), QStringList("hazard_open"));
        QCOMPARE(codesOf(office().receive(back)), QStringList("hazard_open"));
    }

    /// The van has the order, and what was read for it since comes with another one.
    void whatWasReadSinceIsToldOfTheOrderItself()
    {
        van().open(take(office(), {"A-1001"}));
        QVERIFY(van().show("A-1001").judged.cards.open().empty());
        office().record(briFields(), {safety(1, 5, 88.0)});
        van().open(take(office(), {"A-1002"}));
        const auto open = van().show("A-1001").judged.cards.open();
        QCOMPARE(open.size(), std::size_t(1));
        const auto rows = good(boardRows(*van().records, {}));
        QVERIFY(std::ranges::all_of(rows, &BoardRow::hazard));
    }
};

QTEST_MAIN(VanToldHazardsTest)
#include "VanToldHazardsTest.moc"
