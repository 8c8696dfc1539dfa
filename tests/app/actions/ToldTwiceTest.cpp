// What several stations tell of one thing, or one id of several: the same comes of it whoever is
// first, and whichever tag is first by letter.

#include "app/actions/HandOn.h"
#include "app/actions/HazardRegister.h"
#include "db/EventStore.h"
#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class ToldTwiceTest : public QObject, OfficeWithTwoVans
{
    Q_OBJECT

    Site &named(const QString &name) { return name == u"van-7" ? van() : other(); }

    static OrderFields farFields()
    {
        return otherBriFields("A-1003", "C-79", "17-300", "217-555-0163", "217-555-0164");
    }
    static QJsonObject loop() { return briFacts()[2]; }

    void settle(const QString &order, ConflictCode code, const QString &side)
    {
        const auto open = conflicts(order, code);
        QCOMPARE(open.size(), std::size_t(1));
        good(settleConflict(*office().records, open.front().conflict.id, side, "asked"));
    }
    qsizetype noticed(const QString &order)
    {
        const auto events = good(EventStore(office().records->database()).ofOrder(order));
        return std::ranges::count(events, QString("conflict_noticed"), &Event::kind);
    }
    /// By a dispatcher, who is at the van.
    static void change(Site &site, const OrderFields &fields)
    {
        site.records->actAs("D4");
        good(putOrder(*site.records, fields, true));
        site.records->actAs("K7");
    }
    void receiveBoth(bool otherFirst)
    {
        const QByteArray mine = van().bring(), theirs = other().bring();
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(otherFirst ? theirs : mine);
        office().receive(otherFirst ? mine : theirs);
    }
    static void eitherFirst()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::newRow("one first") << false;
        QTest::newRow("other first") << true;
    }
    static void eitherSide()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::addColumn<QString>("side");
        for (const bool otherFirst : {false, true})
            for (const char *side : {"van-7", "van-8"})
                QTest::addRow("%s %d", side, otherFirst) << otherFirst << QString(side);
    }

private slots:
    void init()
    {
        start();
        good(importOrders(*office().records, csv({briFields(), farFields(), analogFields()}),
                          {"o.csv"}));
    }
    void cleanup() { QCOMPARE(faults(), QStringList()); }

    /// What both tell alike is the work of each: it counts for whom the two are settled.
    void whatBothTellCountsForEach_data() { eitherSide(); }
    void whatBothTellCountsForEach()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        takeTwice();
        van().record(briFields(), {safety(1, 5), loop(), briFacts()[3]});
        other().record(briFields(), {safety(1, 5), loop(), briFacts()[4]});
        receiveBoth(otherFirst);
        settle("A-1001", ConflictCode::TwoStations, side);
        QVERIFY(loopCounts("A-1001"));
        QCOMPARE(office().show().decision.criterion("safety")->outcome, CriterionOutcome::Met);
    }

    /// One loop, told of two pairs: it counts for neither until somebody says that they are one.
    void whatIsToldOfTwoPairsCountsForNone_data() { eitherSide(); }
    void whatIsToldOfTwoPairsCountsForNone()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        takeTwice();
        OrderFields swapped = briFields();
        swapped["pair"] = "17-206";
        change(named(side), swapped);
        van().record(briFields(), {safety(1, 5), loop()});
        other().record(briFields(), {safety(1, 5), loop()});
        receiveBoth(otherFirst);
        QCOMPARE(office().show().order.pair, QString("17-206"));
        QVERIFY(!loopCounts("A-1001"));
        settle("A-1001", ConflictCode::OrderChanged, "both");
        QVERIFY(loopCounts("A-1001"));
    }

    /// Two copies of one file, filled in for two orders.
    void oneIdInTwoOrdersCountsInNeither_data() { eitherFirst(); }
    void oneIdInTwoOrdersCountsInNeither()
    {
        QFETCH(bool, otherFirst);
        van().open(take(office(), {"A-1001"}));
        other().open(take(office(), {"A-1003"}, "van-8"));
        van().record(briFields(), {safety(1, 5), loop()});
        other().record(farFields(), {safety(101, 5), loop()});
        const QByteArray mine = van().bring(true), theirs = other().bring(true);
        for (int times = 0; times < 2; ++times) {
            office().receive(otherFirst ? theirs : mine);
            office().receive(otherFirst ? mine : theirs);
        }
        const QString first = otherFirst ? "A-1003" : "A-1001";
        QCOMPARE(noticed(first), 1);
        const std::pair<const char *, const char *> both[] = {{"A-1001", "van-7"},
                                                              {"A-1003", "van-8"}};
        for (const auto &[order, station] : both) {
            QVERIFY2(!loopCounts(order), order);
            const auto open = conflicts(order, ConflictCode::FactDiffers);
            QCOMPARE(open.size(), std::size_t(1));
            QCOMPARE(open.front().stations, QStringList{station});
            QVERIFY(conflicts(order, ConflictCode::TwoStations).empty());
        }
        for (const auto &[order, station] : both) {
            settle(order, ConflictCode::FactDiffers, station);
            QVERIFY2(loopCounts(order), order);
        }
        // Nothing is asked again as more of either comes.
        van().record(briFields(), {briFacts()[1]});
        office().receive(van().bring());
        QVERIFY(loopCounts("A-1001"));
        QVERIFY(loopCounts("A-1003"));
        QCOMPARE(noticed(first), 1);
    }

    /// A hazard under such an id stands on its own order's pair.
    void aHazardUnderAnIdOfTwoOrdersStands_data() { eitherFirst(); }
    void aHazardUnderAnIdOfTwoOrdersStands()
    {
        QFETCH(bool, otherFirst);
        van().open(take(office(), {"A-1001"}));
        other().open(take(office(), {"A-2001"}, "van-8"));
        van().record(briFields(), {safety(1, 5)});
        other().record(analogFields(), {safety(1, 5, 88.0)});
        receiveBoth(otherFirst);
        QVERIFY(!office().show("A-2001").judged.cards.open().empty());
        QVERIFY(office().show("A-1001").judged.cards.open().empty());
        settle("A-2001", ConflictCode::FactDiffers, "van-8");
        QVERIFY(!office().show("A-2001").judged.cards.open().empty());
    }

    /// What the office recorded under an id was there before all vans.
    void anIdOfTheOfficeStaysIts()
    {
        office().record(briFields(), {safety(1, 5), loop()});
        other().open(take(office(), {"A-1003"}, "van-8"));
        other().record(farFields(), {safety(101, 5), loop()});
        office().receive(other().bring());
        QVERIFY(loopCounts("A-1001"));
        QVERIFY(conflicts("A-1001", ConflictCode::FactDiffers).empty());
        QVERIFY(!loopCounts("A-1003"));
        settle("A-1003", ConflictCode::FactDiffers, "van-8");
        QVERIFY(loopCounts("A-1003"));
    }

    /// A void strikes out what its own order has under an id.
    void aVoidReachesNoOtherOrder()
    {
        office().record(briFields(), {safety(1, 5), loop()});
        other().open(take(office(), {"A-1003"}, "van-8"));
        other().record(farFields(), {safety(101, 5), loop()});
        good(voidFact(*other().records, loop()["id"].toString(), "another line"));
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(other().bring());
        QVERIFY(loopCounts("A-1001"));
        good(voidFact(*office().records, loop()["id"].toString(), "it was mine to strike out"));
        QVERIFY(!loopCounts("A-1001"));
    }

    /// A value in use is in the name of who gave that value, not of who changed something else.
    void aValueInUseNamesWhoGaveIt_data() { eitherSide(); }
    void aValueInUseNamesWhoGaveIt()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        takeTwice();
        OrderFields swapped = briFields(), renamed = briFields();
        swapped["pair"] = "17-205"; // that of A-2001, which the vans lack
        renamed["customer"] = "Bright Bakery and Sons";
        change(named(side), swapped);
        change(named(side == u"van-7" ? "van-8" : "van-7"), renamed);
        receiveBoth(otherFirst);
        QCOMPARE(office().show().order.customer, QString("Bright Bakery and Sons"));
        const auto open = conflicts("A-1001", ConflictCode::ValueInUse);
        QCOMPARE(open.size(), std::size_t(1));
        QCOMPARE(open.front().stations, QStringList{side});
    }

    /// Who closes a hazard whose card is in dispute is told, and so is who reads the register.
    void aClosingOfADisputedCardIsSaidToWait()
    {
        takeTwice();
        van().record(briFields(), {safety(1, 5, 88.0)});
        other().record(briFields(), {safety(1, 5)});
        receiveBoth(false);
        const QJsonObject closing = fact(40, "hazard_closed", 40,
                                         {{"hazard", uuid(1)}, {"source", "meter"}, {"by", "Lee"}});
        const RecordReport report = office().record(briFields(), {closing, safety(41, 45)});
        const auto said = std::ranges::find(report.told, uuid(40), &RecordFinding::fact);
        QVERIFY(said != report.told.end());
        QCOMPARE(said->code, QString("disputed"));
        QVERIFY2(said->reason.english().contains("until somebody settles"),
                 qPrintable(said->reason.english()));
        const auto rows = good(hazardRegister(*office().records, true));
        QVERIFY(!rows.empty());
        QVERIFY2(rows.front().state.contains("until somebody settles"),
                 qPrintable(rows.front().state));
        const Handoff handoff = good(handoffOf(*office().records, "A-1001"));
        QVERIFY(!handoff.hazards.empty());
        QVERIFY2(handoff.hazards.front().state.contains("until somebody settles"),
                 qPrintable(handoff.hazards.front().state));
        settle("A-1001", ConflictCode::FactDiffers, "van-7");
        QVERIFY(good(hazardRegister(*office().records, true)).empty());
    }
};

QTEST_MAIN(ToldTwiceTest)
#include "ToldTwiceTest.moc"
