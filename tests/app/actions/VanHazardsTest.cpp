// What stations disagree about closes no hazard and strikes nothing out, on no order of the pair,
// whoever came first.

#include "app/actions/Acceptance.h"
#include "tests/support/OfficeOfHazards.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class VanHazardsTest : public QObject, OfficeOfHazards
{
    Q_OBJECT

    static QJsonObject inYear(QJsonObject fact, const QString &year)
    {
        fact["at"] = fact["at"].toString().replace("2026", year);
        return fact;
    }
    ShownConflict conflict(ConflictCode code)
    {
        const auto all = good(stationConflicts(*office().records, "A-1001"));
        const auto found = std::ranges::find(
            all, code, [](const ShownConflict &each) { return each.conflict.code; });
        if (found == all.end())
            qFatal("no such conflict");
        return *found;
    }
    void settle(ConflictCode code, const QString &side)
    {
        if (!side.isEmpty())
            good(settleConflict(*office().records, conflict(code).conflict.id, side, "asked"));
    }
    CriterionOutcome safetyOf(const QString &order)
    {
        return office().show(order).decision.criterion("safety")->outcome;
    }

private slots:
    void init() { startWithOrders(); }
    void cleanup() { QCOMPARE(faults(), QStringList()); }

    /// A card that names no pair is of the pair that the order had in the van: whoever gets that
    /// one is told.
    void aHazardStaysWithThePairOnWhichItWasRead_data()
    {
        QTest::addColumn<QString>("side");
        QTest::newRow("open") << QString();
        QTest::newRow("office") << QString("office");
        QTest::newRow("van") << QString("both");
    }
    void aHazardStaysWithThePairOnWhichItWasRead()
    {
        QFETCH(QString, side);
        van().open(take(office(), {"A-1001"}));
        swapInOffice("17-299"); // A-1002 was held for the pair, and has it now
        van().record(briFields(), {safety(1, 5, 88.0)});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        settle(ConflictCode::OrderChanged, side);
        const auto open = office().show("A-1002").judged.cards.open();
        QVERIFY(std::ranges::any_of(open, &Hazard::isOfPair));
        QVERIFY(hazardOnBoard("A-1002"));
        QCOMPARE(safetyOf("A-1002"), CriterionOutcome::NotMet);
    }
    /// The van itself went to another pair after it had read the hazard.
    void aHazardStaysWithThePairThatTheVanLeft()
    {
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), {safety(1, 5, 88.0)});
        OrderFields fields = briFields();
        fields["pair"] = "17-299";
        van().records->actAs("D4");
        good(putOrder(*van().records, fields, true));
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        good(putOrder(*office().records,
                      otherBriFields("A-1005", "C-80", "17-301", "217-555-0165", "217-555-0166"),
                      false));
        QCOMPARE(office().show().order.pair, QString("17-299"));
        const auto open = office().show("A-1002").judged.cards.open();
        QVERIFY(std::ranges::any_of(open, &Hazard::isOfPair));
    }
    /// A clear card of the pair that the order had in the van clears nothing on the one it has now.
    void aClearCardOfAnotherPairClearsNothing()
    {
        const OrderFields before =
            otherBriFields("A-1004", "C-81", "17-299", "217-555-0167", "217-555-0168");
        good(putOrder(*office().records, before, false));
        office().record(before, {safety(50, 1, 88.0), closing(51, 2, "meter", 50)});
        good(cancelOrder(*office().records, "A-1004", "the customer moved"));
        van().open(take(office(), {"A-1001"}));
        swapInOffice("17-299");
        van().record(briFields(), {safety(1, 5)});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        QVERIFY(!office().show().judged.cards.open().empty());
        QVERIFY(hazardOnBoard("A-1001"));
    }

    void whatIsDatedAheadClosesNoHazard_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("closes");
        QTest::newRow("open") << QString() << false;
        QTest::newRow("office") << QString("office") << false;
        QTest::newRow("van") << QString("van-7") << true;
    }
    void whatIsDatedAheadClosesNoHazard()
    {
        QFETCH(QString, side);
        QFETCH(bool, closes);
        office().record(briFields(), {safety(1, 5, 88.0)});
        van().at("2027-03-04T20:00:00-06:00");
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(),
                     {inYear(closing(30, 20), "2027"), inYear(safety(31, 25), "2027")});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        settle(ConflictCode::ClockAhead, side);
        for (const char *order : {"A-1001", "A-1002"}) {
            QCOMPARE(office().show(order).judged.cards.open().empty(), closes);
            QCOMPARE(hazardOnBoard(order), !closes);
            QCOMPARE(safetyOf(order) == CriterionOutcome::NotMet, !closes);
        }
        QCOMPARE(hazardOnBoard("A-1003"), !closes); // nearby
    }

    /// The hazard itself is read from such a card, too.
    void aHazardDatedAheadStands()
    {
        van().at("2027-03-04T20:00:00-06:00");
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), {inYear(safety(1, 5, 88.0), "2027")});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        settle(ConflictCode::ClockAhead, "office");
        QVERIFY(hazardOnBoard("A-1001"));
        QVERIFY(hazardOnBoard("A-1002"));
    }

    void aVoidDatedAheadStrikesNothingOut()
    {
        office().record(briFields(), briFacts());
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        van().at("2027-03-04T20:00:00-06:00");
        van().open(take(office(), {"A-1001"}));
        van().records->actAs("S1");
        good(voidFact(*van().records, briFacts()[2]["id"].toString(), "another line"));
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        settle(ConflictCode::ClockAhead, "van-7");
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
    }

    /// Two closings under one id: none closes, on neither order of the pair.
    void aDisputedClosingClosesNothingElsewhere_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::newRow("one") << false;
        QTest::newRow("other") << true;
    }
    void aDisputedClosingClosesNothingElsewhere()
    {
        QFETCH(bool, otherFirst);
        office().record(briFields(), {safety(1, 5, 88.0)});
        takeTwice();
        van().record(briFields(), {closing(30, 20), safety(31, 25)});
        other().record(briFields(), {closing(30, 20, "ringing")});
        const QByteArray mine = van().bring(), theirs = other().bring();
        office().receive(otherFirst ? theirs : mine);
        QCOMPARE(hazardOnBoard("A-1002"), otherFirst); // closed by the one that is here
        office().receive(otherFirst ? mine : theirs);
        for (const char *order : {"A-1001", "A-1002", "A-1003"}) {
            QVERIFY2(!office().show(order).judged.cards.open().empty(), order);
            QVERIFY2(hazardOnBoard(order), order);
        }
        settle(ConflictCode::FactDiffers, "van-7");
        for (const char *order : {"A-1001", "A-1002", "A-1003"}) {
            QVERIFY2(office().show(order).judged.cards.open().empty(), order);
            QVERIFY2(!hazardOnBoard(order), order);
        }
    }

    /// One van read 88 V, closed it and read clear; the other has that card as clear.
    void aDisputedHazardEndsAlike_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::addColumn<QString>("side");
        for (const bool otherFirst : {false, true}) {
            QTest::addRow("open %d", otherFirst) << otherFirst << QString();
            QTest::addRow("van %d", otherFirst) << otherFirst << QString("van-7");
            QTest::addRow("other %d", otherFirst) << otherFirst << QString("van-8");
        }
    }
    void aDisputedHazardEndsAlike()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        takeTwice();
        van().record(briFields(), {safety(1, 5, 88.0), closing(30, 20), safety(31, 25)});
        other().record(briFields(), {safety(1, 5)});
        const QByteArray mine = van().bring(), theirs = other().bring();
        office().receive(otherFirst ? theirs : mine);
        office().receive(otherFirst ? mine : theirs);
        settle(ConflictCode::FactDiffers, side);
        const bool closed = !side.isEmpty();
        for (const char *order : {"A-1001", "A-1002"}) {
            const OrderView view = office().show(order);
            QCOMPARE(view.judged.cards.hazards().size(), std::size_t(1));
            QCOMPARE(view.judged.cards.open().empty(), closed);
            QCOMPARE(hazardOnBoard(order), !closed);
            QVERIFY(view.judged.cards.hazardOf(uuid(1)));
        }
        QCOMPARE(hazardOnBoard("A-1003"), !closed); // nearby
        QCOMPARE(safetyOf("A-1001"), closed ? CriterionOutcome::Met : CriterionOutcome::NotMet);
        const auto decided = good(decideOrder(*office().records, "A-1002"));
        good(decideAgain(*office().records, decided.id)); // from what is stored with it
    }

    /// Many ids that differ in one order cost as many times more, and no more than that.
    void manyThatDifferAreShownWithWhatEachSays()
    {
        takeTwice();
        const auto notes = [](const char *text) {
            QList<QJsonObject> facts;
            for (int n = 0; n < 150; ++n)
                facts << fact(1000 + n, "note", 10, {{"text", text}});
            return facts;
        };
        van().record(briFields(), notes("the cap is white"));
        other().record(briFields(), notes("the cap is grey"));
        office().receive(van().bring());
        office().receive(other().bring());
        const auto all = good(stationConflicts(*office().records));
        QCOMPARE(all.size(), std::size_t(150));
        for (const ShownConflict &each : all) {
            QString told;
            for (const ShownConflict::Side &side : each.sides)
                told += side.says.english();
            QVERIFY2(told.contains("the cap is white") && told.contains("the cap is grey"),
                     qPrintable(told));
        }
    }
};

QTEST_MAIN(VanHazardsTest)
#include "VanHazardsTest.moc"
