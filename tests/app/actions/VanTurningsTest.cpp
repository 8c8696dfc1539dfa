// What a person does where something went otherwise than it was meant: a file that never left, one
// that was written over, an order that was entered twice, a conflict that was settled wrongly.

#include "app/actions/Board.h"
#include "app/actions/Vans.h"
#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class VanTurningsTest : public QObject, OfficeWithTwoVans
{
    Q_OBJECT

    static OrderFields otherFields()
    {
        return otherBriFields("A-1002", "C-78", "17-299", "217-555-0161", "217-555-0162");
    }
    static QList<QJsonObject> withIds(QList<QJsonObject> facts, int from)
    {
        for (qsizetype i = 0; i < facts.size(); ++i)
            facts[i]["id"] = uuid(from + int(i));
        return facts;
    }
    BoardRow rowOf(const QString &order)
    {
        const auto rows = good(boardRows(*office().records, {}));
        return *std::ranges::find(rows, order, &BoardRow::order);
    }
    static QStringList sidesOf(const ShownConflict &conflict)
    {
        QStringList sides;
        for (const ShownConflict::Side &side : conflict.sides)
            sides << side.side;
        return sides;
    }
    static QString says(const ShownConflict &conflict, const QString &side)
    {
        for (const ShownConflict::Side &each : conflict.sides)
            if (each.side == side)
                return each.says.english();
        return {};
    }
    /// Both vans worked on the order, and the office did nothing.
    ShownConflict twoVans()
    {
        takeTwice();
        van().record(briFields(), withIds(briFacts(), 100));
        other().record(briFields(), {fact(300, "note", 30, {{"text", "the cap is white"}}),
                                     withIds(briFacts(), 200).at(2)});
        office().receive(van().bring());
        office().receive(other().bring());
        const auto all = conflicts("A-1001", ConflictCode::TwoStations);
        if (all.size() != 1)
            qFatal("no such conflict");
        return all.front();
    }

private slots:
    void init()
    {
        start();
        good(importOrders(*office().records, csv({briFields(), otherFields()}), {"o.csv"}));
    }
    void cleanup() { QCOMPARE(faults(), QStringList()); }

    void whatIsWrittenOverIsTold()
    {
        good(takeInto(office(), "out.json", {"A-1001"}));
        const TakenAlong second = good(takeInto(office(), "out.json", {"A-1002"}));
        QCOMPARE(second.warnings.size(), std::size_t(1));
        QCOMPARE(second.warnings[0].order, QString("A-1001"));
        QCOMPARE(second.warnings[0].finding.code, QString("file_replaced"));
        // The same again, or with more, loses nothing.
        QVERIFY(good(takeInto(office(), "out.json", {"A-1002"})).warnings.empty());
        QVERIFY(good(takeInto(office(), "out.json", {"A-1001", "A-1002"})).warnings.empty());
        van().open(contentOf(office().file("out.json")));
        office().receive(van().bring());
        QVERIFY(good(takeInto(office(), "out.json", {"A-1002"}, "van-8"))
                    .warnings.empty()); // all is home
    }
    void theFirstDigitsNameABundle()
    {
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), {safety(1, 5)});
        const auto bring = [this](const QString &since) {
            return bringBack(*van().records, {van().file("back.json"), since, 0, true});
        };
        const BroughtBack first = good(bring({}));
        van().record(briFields(), {fact(2, "note", 10, {{"text", "white cap"}})});
        QCOMPARE(good(bring(first.bundle.left(10))).facts, 1);
        QCOMPARE(bring("no such").error().code, ErrorCode::NotFound);
        QCOMPARE(good(bring({})).facts, 2);
    }

    void whatDidNotGoIsHereAgain()
    {
        const QByteArray bundle = take(office(), {"A-1001", "A-1002"});
        QCOMPARE(recallOrders(*office().records, "van-7", {"A-1001"}, " ").error().code,
                 ErrorCode::Usage);
        QCOMPARE(recallOrders(*office().records, "van-9", {"A-1001"}, "lost").error().code,
                 ErrorCode::NotFound);
        good(recallOrders(*office().records, "van-7", {"A-1001"}, "never handed over"));
        QVERIFY(rowOf("A-1001").out.empty());
        QVERIFY(!rowOf("A-1002").out.empty());
        // All or none: one of them is here.
        const auto both =
            recallOrders(*office().records, "van-7", {"A-1002", "A-1001"}, "never handed over");
        QCOMPARE(both.error().code, ErrorCode::Refused);
        QVERIFY(!rowOf("A-1002").out.empty());
        // The file went after all: what comes of it is taken in as ever.
        van().open(bundle);
        van().record(briFields(), {safety(1, 5)});
        const TakenBundle back = office().receive(van().bring());
        QVERIFY(!back.refuses());
        QCOMPARE(back.orders.front().added, QStringList(uuid(1)));
        // Another van may have it at once, and the same bundle goes once more.
        QCOMPARE(take(office(), {"A-1001"}, "van-8").isEmpty(), false);
    }

    void theVanKnowsWhatItBroughtHome()
    {
        van().open(take(office(), {"A-1001", "A-1002"}));
        const auto stateOf = [this](const QString &order) {
            for (const CarriedOrder &each : good(carriedOrders(*van().records)))
                if (each.order == order)
                    return each.back;
            return true;
        };
        QVERIFY(!stateOf("A-1001") && !stateOf("A-1002"));
        van().bring(true);
        QVERIFY(!stateOf("A-1001"));
        van().bring();
        QVERIFY(stateOf("A-1001") && stateOf("A-1002"));
        van().open(take(office(), {"A-1002"}));
        QVERIFY(stateOf("A-1001") && !stateOf("A-1002"));
    }
    void everyStationIsListed()
    {
        good(takeInto(office(), "out.json", {"A-1001"}));
        good(loseVan(*office().records, "van-8", "stolen"));
        const auto known = good(knownStations(*office().records));
        QCOMPARE(known.size(), std::size_t(2));
        QCOMPARE(known[0].orders, QStringList("A-1001"));
        QCOMPARE(known[0].toJson()["state"].toString(), QString("in_use"));
        QCOMPARE(known[1].toJson()["state"].toString(), QString("lost"));
    }

    /// The van's own order has the number of one that the office took in meanwhile: it is the same
    /// one if it is of one circuit.
    void anOrderEnteredTwiceIsOne()
    {
        van().open(take(office(), {"A-1001"}));
        OrderFields own =
            otherBriFields("A-1003", "C-79", "17-310", "217-555-0163", "217-555-0164");
        van().records->actAs("D4");
        good(putOrder(*van().records, own, false));
        van().record(own, {safety(1, 5)});
        own["pair"] = "17-311";
        good(putOrder(*office().records, own, false));
        const TakenBundle back = office().receive(van().bring());
        QVERIFY(!back.refuses());
        // What the van measured on its pair counts for nothing on another one.
        const OrderView view = office().show("A-1003");
        QCOMPARE(view.order.pair, QString("17-311"));
        QVERIFY(view.decision.criterion("safety")->outcome != CriterionOutcome::Met);
        QCOMPARE(good(stationConflicts(*office().records, "A-1003")).size(), std::size_t(1));
    }
    void theOfficesOrderMeetsTheVansOwn()
    {
        van().open(take(office(), {"A-1001"}));
        OrderFields own =
            otherBriFields("A-1003", "C-79", "17-310", "217-555-0163", "217-555-0164");
        van().records->actAs("D4");
        good(putOrder(*van().records, own, false));
        own["pair"] = "17-311";
        good(putOrder(*office().records, own, false));
        const TakenBundle opened = van().open(take(office(), {"A-1003"}));
        QVERIFY(!opened.refuses());
        QCOMPARE(opened.orders[0].findings.front().code, QString("order_changed"));
        QCOMPARE(van().show("A-1003").order.pair, QString("17-310"));
        QVERIFY(!office().receive(van().bring()).refuses());
        QCOMPARE(office().faults(), QStringList());
    }
    /// Once the two have met, what the office changes goes along as ever.
    void anOrderEnteredTwiceTakesLaterChanges()
    {
        OrderFields own =
            otherBriFields("A-1003", "C-79", "17-310", "217-555-0163", "217-555-0164");
        van().open(take(office(), {"A-1001"}));
        van().records->actAs("D4");
        good(putOrder(*van().records, own, false));
        good(putOrder(*office().records, own, false));
        van().open(take(office(), {"A-1003"}));
        own["pair"] = "17-311";
        office().records->changeWhatIsOut(true);
        good(putOrder(*office().records, own, true));
        van().open(take(office(), {"A-1003"}));
        QCOMPARE(van().show("A-1003").order.pair, QString("17-311"));
    }
    void anotherCircuitsOrderIsRefusedAndSaysWhatToDo()
    {
        van().open(take(office(), {"A-1001"}));
        van().records->actAs("D4");
        good(putOrder(*van().records,
                      otherBriFields("A-1003", "C-79", "17-310", "217-555-0163", "217-555-0164"),
                      false));
        good(putOrder(*office().records,
                      otherBriFields("A-1003", "C-80", "17-311", "217-555-0165", "217-555-0166"),
                      false));
        const TakenBundle back = office().receive(van().bring());
        QCOMPARE(back.orders.back().code, QString("number_in_use"));
        QVERIFY(back.orders.back().reason.contains("C-79") &&
                back.orders.back().reason.contains("right number"));
    }

    void onlyWhoRecordedSomethingIsASide()
    {
        const ShownConflict conflict = twoVans();
        QStringList sides = sidesOf(conflict); // by tag, which is drawn
        QCOMPARE(sides.back(), QString("both"));
        sides.sort();
        QCOMPARE(sides, (QStringList{"both", "van-7", "van-8"}));
        const QString mine = says(conflict, "van-7"), theirs = says(conflict, "van-8");
        QVERIFY2(mine.contains("Set aside: 1 entry"), qPrintable(mine));
        QVERIFY2(theirs.contains("counts: 1 entry") && theirs.contains("2026"), qPrintable(theirs));
        QVERIFY(!settleConflict(*office().records, conflict.conflict.id, "office", "ours"));
        good(settleConflict(*office().records, conflict.conflict.id, "both", "one line"));
    }
    void aSettlementThatWasWrongIsMadeAnew()
    {
        const ShownConflict conflict = twoVans();
        const QString &id = conflict.conflict.id;
        office().at("2026-03-05T08:00:00-06:00");
        good(settleConflict(*office().records, id, "van-8", "misheard"));
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
        // What was recorded since is in no conflict.
        office().at("2026-03-06T08:00:00-06:00");
        office().record(briFields(), {fact(400, "note", 50, {{"text", "seen"}})});
        const auto again = settleConflict(*office().records, id, "van-7", "van-7 did the work");
        QCOMPARE(again.error().code, ErrorCode::Refused);
        QVERIFY2(again.error().message.contains("misheard"), qPrintable(again.error().message));
        good(settleConflict(*office().records, id, "van-7", "van-7 did the work", true));
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        const auto all = good(stationConflicts(*office().records, "A-1001", true));
        const auto settled = std::ranges::find_if(
            all, [&id](const ShownConflict &each) { return each.conflict.id == id; });
        QCOMPARE(settled->toJson().value("settled")["side"].toString(), QString("van-7"));
        QVERIFY(settled->conflict.settled->first < settled->conflict.settled->at);
    }
    /// It changed the values of the order.
    void aSettlementThatChangedTheOrderStands()
    {
        van().open(take(office(), {"A-1001"}));
        OrderFields fields = briFields();
        fields["pair"] = "17-311";
        office().records->changeWhatIsOut(true);
        good(putOrder(*office().records, fields, true));
        van().record(briFields(), {safety(1, 5), briFacts()[2]});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        const auto all = conflicts("A-1001", ConflictCode::OrderChanged);
        QCOMPARE(all.size(), std::size_t(1));
        const QString &id = all.front().conflict.id;
        good(settleConflict(*office().records, id, "office", "first thought"));
        good(settleConflict(*office().records, id, "van-7", "the van is right", true));
        QCOMPARE(office().show().order.pair, briFields()["pair"]);
        const auto back = settleConflict(*office().records, id, "office", "and again", true);
        QCOMPARE(back.error().code, ErrorCode::Refused);
        QVERIFY(back.error().message.contains("change the order"));
    }

    void theVansClockIsBehindTheBundle()
    {
        office().at("2026-03-09T07:00:00-06:00");
        good(putOrder(*office().records,
                      otherBriFields("A-1003", "C-79", "17-310", "217-555-0163", "217-555-0164"),
                      false));
        const TakenBundle opened = van().open(take(office(), {"A-1003"}));
        QCOMPARE(opened.orders[0].findings.back().code, QString("clock_behind"));
        QVERIFY(opened.orders[0].findings.back().reason.english().contains("4 March 2026"));
    }

    void whatIsNoBundleIsNamed_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("says");
        QTest::newRow("empty") << QByteArray("\n") << "The file is empty";
        QTest::newRow("paper") << QByteArray("%PDF-1.6\n") << "a PDF";
        QTest::newRow("records") << QByteArray("SQLite format 3") << "whole records";
        QTest::newRow("job") << QByteArray(R"({"form":1,"order":{},"facts":[]})")
                             << "the record of a job";
        QTest::newRow("other") << QByteArray(R"({"type":"FeatureCollection"})")
                               << "something else wrote it";
        QTest::newRow("cut") << QByteArray(R"({"bundle":{"answers":[],)") << "cut on its way";
        QTest::newRow("no id") << QByteArray(R"({"bundle":{}})") << "damaged on its way";
    }
    void whatIsNoBundleIsNamed()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, says);
        const TakenBundle opened = van().open(bytes);
        QCOMPARE(opened.code, QString("damaged"));
        QVERIFY2(opened.reason.contains(says), qPrintable(opened.reason));
    }
    void keysAreNoBundle()
    {
        const TakenBundle opened = van().open(good(publicKeyFile(*office().records)));
        QVERIFY2(opened.reason.contains("holds keys"), qPrintable(opened.reason));
    }
    void aBundleForAnotherVanSaysSo()
    {
        const TakenBundle opened = other().open(take(office(), {"A-1001"}));
        QCOMPARE(opened.code, QString("other_station"));
        QVERIFY(opened.reason.contains("give it to that van"));
    }
    /// The new key is shown beside the old one, to be compared by telephone.
    void aRenewedKeyIsShownWithTheOneBefore()
    {
        Site restored(false);
        const AddedVan added = good(addVan(*office().records, "van-7",
                                           good(publicKeyFile(*restored.records)), "k.txt", true));
        QVERIFY(!added.before.isEmpty() && added.before != added.fingerprint);
    }
};

QTEST_MAIN(VanTurningsTest)
#include "VanTurningsTest.moc"
