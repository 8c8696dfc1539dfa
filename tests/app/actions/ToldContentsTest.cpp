// Contents of one id, and who did what unseen, among three vans: the same comes of it in each order
// of delivery, and whether a void or the settlement came first.

#include "app/actions/Audit.h"
#include "db/ForeignStore.h"
#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>
#include <array>

using namespace loopwright;
using namespace loopwright::jobs;

class ToldContentsTest : public QObject
{
    Q_OBJECT

    using Turn = std::array<int, 3>; ///< which van is received when

    std::unique_ptr<Site> m_office;
    std::array<std::unique_ptr<Site>, 3> m_vans; ///< van-7, van-8, van-9

    Site &office() { return *m_office; }
    Site &van(int number) { return *m_vans[std::size_t(number - 7)]; }
    static QString name(int number) { return "van-" + QString::number(number); }

    static OrderFields farFields()
    {
        return otherBriFields("A-1003", "C-79", "17-300", "217-555-0163", "217-555-0164");
    }
    /// The loop of the order, of which a copy reads otherwise.
    static QJsonObject loop(double ohms = 612)
    {
        QJsonObject reading = briFacts()[2];
        reading["dc_resistance_ohm"] = ohms;
        return reading;
    }
    static QJsonObject evidence(int fact) { return briFacts()[fact]; }

    void takeAll(const QString &order)
    {
        for (const int number : {7, 8, 9})
            van(number).open(take(office(), {order}, name(number), true));
    }
    void receiveInTurn(const Turn &turn)
    {
        std::array<QByteArray, 3> brought;
        for (const int number : turn)
            brought[std::size_t(number - 7)] = van(number).bring(true);
        office().at("2026-03-05T08:00:00-06:00");
        for (const int number : turn)
            office().receive(brought[std::size_t(number - 7)]);
    }
    std::vector<ShownConflict> conflicts(const QString &order, ConflictCode code)
    {
        auto all = good(stationConflicts(*office().records, order, true));
        std::erase_if(all, [code](const auto &each) {
            return each.conflict.code != code || !each.conflict.stands;
        });
        return all;
    }
    void settle(const QString &side, ConflictCode code = ConflictCode::FactDiffers)
    {
        const auto open = conflicts("A-1001", code);
        QCOMPARE(open.size(), std::size_t(1));
        good(settleConflict(*office().records, open.front().conflict.id, side, "asked"));
    }
    bool loopCounts()
    {
        return office().show().decision.criterion("loop")->outcome == CriterionOutcome::Met;
    }
    /// The id under which a loop reading counts.
    QString countingLoop() { return office().show().decision.criterion("loop")->evidence.front(); }
    void strikeOut(int number)
    {
        van(number).records->actAs("S1"); // the visit is over
        good(voidFact(*van(number).records, loop()["id"].toString(), "read on the wrong range"));
    }
    /// A second file of the same van.
    void receiveMore(int number)
    {
        van(number).at("2026-03-05T20:00:00-06:00");
        office().at("2026-03-06T08:00:00-06:00");
        office().receive(van(number).bring(true));
    }
    /// Accepted and completed by what van-7 did.
    void completeBySeven()
    {
        takeAll("A-1001");
        van(7).record(briFields(), briFacts());
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van(7).bring());
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        office().records->changeWhatIsOut(true);
        good(completeOrder(*office().records, "A-1001"));
    }
    static void eachTurn()
    {
        QTest::addColumn<Turn>("turn");
        Turn turn{7, 8, 9};
        do
            QTest::addRow("%d %d %d", turn[0], turn[1], turn[2]) << turn;
        while (std::ranges::next_permutation(turn).found);
    }

private slots:
    void init()
    {
        m_office = std::make_unique<Site>(true);
        good(importOrders(*office().records, csv({briFields(), farFields()}), {"o.csv"}));
        for (const int number : {7, 8, 9}) {
            m_vans[std::size_t(number - 7)] = std::make_unique<Site>(false);
            join(office(), van(number), name(number));
        }
    }
    void cleanup()
    {
        QCOMPARE(office().faults(), QStringList());
        QVERIFY(good(auditDerived(*office().records)).empty());
    }

    /// Who struck out what he told struck out his content of it; not what another told.
    void aVoidFollowsTheContentOfWhoVoided_data()
    {
        QTest::addColumn<int>("voids");
        QTest::addColumn<bool>("later");
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("counts");
        for (const bool later : {false, true})
            for (const int voids : {7, 8})
                for (const int side : {7, 8})
                    QTest::addRow("%d voids %s, settled for %d", voids,
                                  later ? "afterwards" : "before", side)
                        << voids << later << name(side) << (voids != side);
    }
    void aVoidFollowsTheContentOfWhoVoided()
    {
        QFETCH(int, voids);
        QFETCH(bool, later);
        QFETCH(QString, side);
        QFETCH(bool, counts);
        takeAll("A-1001");
        van(7).record(briFields(), {evidence(0), loop()});
        van(8).record(briFields(), {loop(640)});
        if (!later)
            strikeOut(voids);
        receiveInTurn({8, 7, 9});
        QVERIFY(!loopCounts());
        settle(side);
        if (later) {
            QVERIFY(loopCounts());
            strikeOut(voids);
            receiveMore(voids);
        }
        QCOMPARE(loopCounts(), counts);
    }

    /// What the office recorded is struck out by the office alone.
    void aVoidOfAVanLeavesWhatTheOfficeTold_data()
    {
        QTest::addColumn<bool>("later");
        QTest::newRow("before") << false;
        QTest::newRow("afterwards") << true;
    }
    void aVoidOfAVanLeavesWhatTheOfficeTold()
    {
        QFETCH(bool, later);
        van(8).open(take(office(), {"A-1001"}, name(8)));
        office().record(briFields(), {evidence(0), loop()});
        van(8).record(briFields(), {loop(640)});
        if (!later)
            strikeOut(8);
        receiveMore(8);
        QVERIFY(!loopCounts());
        settle("office");
        QVERIFY(loopCounts());
        if (later) {
            strikeOut(8);
            receiveMore(8);
        }
        QVERIFY(loopCounts());
        good(voidFact(*office().records, countingLoop(), "the wrong pair"));
        QVERIFY(!loopCounts());
    }

    /// Named by its first id, the instrument is that of the content too.
    void whatItWasMadeWithFollows()
    {
        takeAll("A-1001");
        const QJsonObject named =
            fact(70, "made_with", 50,
                 {{"facts", QJsonArray{loop()["id"].toString()}}, {"instrument", "TS-4"}});
        van(7).record(briFields(), {evidence(0), loop(), named});
        van(8).record(briFields(), {loop(640)});
        receiveInTurn({7, 8, 9});
        settle("van-7");
        QVERIFY(loopCounts());
    }

    /// What came when the order had ended decides nothing, whoever settles for it; what it was
    /// completed by goes on to count.
    void settledInAnOrderThatHasEnded_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("counts");
        QTest::newRow("for what it was completed by") << "van-7" << true;
        QTest::newRow("for what came later") << "van-8" << false;
    }
    void settledInAnOrderThatHasEnded()
    {
        QFETCH(QString, side);
        QFETCH(bool, counts);
        completeBySeven();
        van(8).record(briFields(), {loop(640)});
        office().at("2026-03-06T08:00:00-06:00");
        office().receive(van(8).bring());
        settle(side);
        QCOMPARE(loopCounts(), counts);
    }

    /// Also where both were told before it ended, and nobody had decided: then neither counted.
    void settledForWhatNobodyHadDecidedAtTheEnd()
    {
        takeAll("A-1001");
        van(7).record(briFields(), {evidence(0), loop()});
        van(8).record(briFields(), {loop(640)});
        receiveInTurn({7, 8, 9});
        office().at("2026-03-06T08:00:00-06:00");
        office().records->changeWhatIsOut(true);
        good(cancelOrder(*office().records, "A-1001", "the customer moved"));
        office().at("2026-03-07T08:00:00-06:00");
        settle("van-7");
        QVERIFY(!loopCounts());
    }

    /// A card is recorded at once; whichever of them stands under the id, neither counted.
    void settledForACardThatNobodyHadDecidedAtTheEnd_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::addColumn<QString>("side");
        for (const bool otherFirst : {false, true})
            for (const int side : {7, 8})
                QTest::addRow("%s %d", otherFirst ? "8 first" : "7 first", side)
                    << otherFirst << name(side);
    }
    void settledForACardThatNobodyHadDecidedAtTheEnd()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        takeAll("A-1001");
        van(7).record(briFields(), {safety(1, 5)});
        van(8).record(briFields(), {safety(1, 5, 0.3)});
        receiveInTurn(otherFirst ? Turn{8, 7, 9} : Turn{7, 8, 9});
        office().records->changeWhatIsOut(true);
        office().at("2026-03-06T08:00:00-06:00");
        good(cancelOrder(*office().records, "A-1001", "the customer moved"));
        office().at("2026-03-07T08:00:00-06:00");
        settle(side);
        QVERIFY(office().show().decision.criterion("safety")->outcome != CriterionOutcome::Met);
    }

    /// Of two who told the same either strikes it out.
    void aFellowTellersVoidCounts_data()
    {
        QTest::addColumn<QString>("side");
        QTest::newRow("7") << name(7);
        QTest::newRow("9") << name(9);
    }
    void aFellowTellersVoidCounts()
    {
        QFETCH(QString, side);
        takeAll("A-1001");
        van(7).record(briFields(), {evidence(0), loop()});
        van(8).record(briFields(), {loop(640)});
        van(9).record(briFields(), {loop()});
        strikeOut(9);
        receiveInTurn({7, 8, 9});
        settle(side);
        QVERIFY(!loopCounts());
    }

    /// A copy is as far ahead of the clock as what was told first.
    void whatWasAheadIsAheadUnderItsOwnId()
    {
        takeAll("A-1001");
        QJsonObject card = evidence(0), later = loop();
        card["at"] = "2026-03-20T08:55:00-06:00";
        later["at"] = "2026-03-20T09:00:00-06:00";
        van(7).at("2026-03-20T20:00:00-06:00");
        van(7).record(briFields(), {card, later});
        van(8).record(briFields(), {loop(640)});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van(7).bring(true));
        office().at("2026-03-21T08:00:00-06:00");
        office().receive(van(8).bring(true));
        settle("van-7");
        QVERIFY(!loopCounts());
        settle("van-7", ConflictCode::ClockAhead);
        QVERIFY(loopCounts());
    }

    /// Both come home after the end, and tell the same.
    void whoComesAfterTheEndIsTold_data() { eachTurn(); }
    void whoComesAfterTheEndIsTold()
    {
        QFETCH(Turn, turn);
        takeAll("A-1001");
        office().records->changeWhatIsOut(true);
        good(cancelOrder(*office().records, "A-1001", "the customer moved"));
        for (const int number : turn)
            van(number).record(briFields(), {evidence(0)});
        receiveInTurn(turn);
        QCOMPARE(conflicts("A-1001", ConflictCode::OrderClosed).size(), std::size_t(3));
    }

    /// Two worked unseen by one another, and the third did nothing of its own.
    void whoWorkedUnseenIsTold_data() { eachTurn(); }
    void whoWorkedUnseenIsTold()
    {
        QFETCH(Turn, turn);
        takeAll("A-1001");
        van(7).record(briFields(), {evidence(0)});
        van(8).record(briFields(), {evidence(0), loop()});
        van(9).record(briFields(), {loop()});
        receiveInTurn(turn);
        QCOMPARE(conflicts("A-1001", ConflictCode::TwoStations).size(), std::size_t(1));
    }

    /// One of two knew all that the other did.
    void whoKnewAllIsNoSecondStation_data() { eachTurn(); }
    void whoKnewAllIsNoSecondStation()
    {
        QFETCH(Turn, turn);
        takeAll("A-1001");
        van(7).record(briFields(), {evidence(0)});
        van(8).record(briFields(), {evidence(0), loop()});
        van(9).record(briFields(), {evidence(0)});
        receiveInTurn(turn);
        QVERIFY(conflicts("A-1001", ConflictCode::TwoStations).empty());
    }

    /// The only work of one has an id that stands in another order.
    void workUnderAnIdOfAnotherOrderIsWork_data() { eachTurn(); }
    void workUnderAnIdOfAnotherOrderIsWork()
    {
        QFETCH(Turn, turn);
        van(7).open(take(office(), {"A-1001"}, name(7)));
        van(8).open(take(office(), {"A-1003"}, name(8)));
        van(9).open(take(office(), {"A-1003"}, name(9), true));
        van(7).record(briFields(), {loop()});
        van(8).record(farFields(), {loop(640)});
        van(9).record(farFields(), {evidence(3)});
        receiveInTurn(turn);
        QCOMPARE(conflicts("A-1003", ConflictCode::TwoStations).size(), std::size_t(1));
    }

    /// Of a card that two of three tell alike both are the tellers, under its own id too.
    void whoToldAlikeTellsTheContent_data() { eachTurn(); }
    void whoToldAlikeTellsTheContent()
    {
        QFETCH(Turn, turn);
        takeAll("A-1001");
        van(7).record(briFields(), {safety(1, 5)});
        van(8).record(briFields(), {safety(1, 5, 88.0)});
        van(9).record(briFields(), {safety(1, 5)});
        receiveInTurn(turn);
        settle("van-9");
        const auto shown = conflicts("A-1001", ConflictCode::FactDiffers).front().conflict;
        QStringList alike{van(7).tag(), van(9).tag()};
        alike.sort();
        QCOMPARE(tellers(idOfToldContent(shown.toldBy(van(9).tag()))), alike);
    }

private:
    QStringList tellers(const QString &fact)
    {
        QStringList names;
        const auto all = good(ForeignStore(office().records->database()).tellersOf("A-1001"));
        for (const FactOrigin &each : all)
            if (each.fact == fact)
                names << each.station;
        return names;
    }
};

QTEST_MAIN(ToldContentsTest)
#include "ToldContentsTest.moc"
