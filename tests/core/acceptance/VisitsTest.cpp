// One visit for all lines at a premises, and a safety card for each pair.

#include "core/acceptance/Visits.h"

#include "core/acceptance/Judge.h"
#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

QString clock(int minute)
{
    return fact(0, "", minute, {})["at"].toString();
}

/// A visit as it is recorded in an order; a negative minute leaves that end out.
QJsonObject visit(int n, int arrived, int left = -1)
{
    QJsonObject body;
    if (arrived >= 0)
        body.insert("arrived", clock(arrived));
    if (left >= 0)
        body.insert("left", clock(left));
    return fact(n, "visit", std::max(arrived, left), body);
}

std::vector<Fact> facts(const QList<QJsonObject> &list, const QString &order = "A-2001",
                        const QString &installer = "K7")
{
    QJsonObject object = record(jobs::order(analogFields()), list);
    object["order"] = order;
    object["installer"] = installer;
    const auto read = readJobRecord(object, "record", [] { return QString(); });
    if (!read)
        qFatal("%s", qPrintable(read.error().text()));
    return read->facts;
}

/// The input of the analog order with what other orders say.
DecisionInput shared(const QList<QJsonObject> &own, const std::vector<Fact> &others)
{
    DecisionInput input = jobs::input(analogFields(), own);
    SharedVisits visits = shareVisits(input.facts, others);
    input.visits = std::move(visits.visits);
    input.selfTests = std::move(visits.selfTests);
    return input;
}

QString outcome(const DecisionInput &input, const QString &key)
{
    return toText(decide(input, limits()).criterion(key)->outcome);
}

QList<QJsonObject> later(QList<QJsonObject> list, int minutes, int idsFrom)
{
    for (QJsonObject &each : list) {
        each["id"] = uuid(idsFrom++);
        each["at"] = Moment::parse(each["at"].toString())->plusSeconds(minutes * 60).text();
    }
    return list;
}

} // namespace

class VisitsTest : public QObject
{
    Q_OBJECT

private slots:
    void arrivalAndLeavingAreOneVisit()
    {
        const auto visits = visitsOf(facts({visit(50, 2), visit(51, 2, 60), visit(52, 300)}));
        QCOMPARE(visits.size(), 2u);
        QCOMPARE(visits[0].left->text(), clock(60));
        QCOMPARE(visits[0].facts, (QStringList{uuid(50), uuid(51)}));
        QVERIFY(!visits[1].left);
    }
    void aLeavingWithoutArrivalEndsTheOpenVisit()
    {
        const auto visits = visitsOf(facts({visit(50, 2), visit(51, -1, 60)}));
        QCOMPARE(visits.size(), 1u);
        QCOMPARE(visits[0].left->text(), clock(60));
        const auto alone = visitsOf(facts({visit(51, -1, 60)}));
        QCOMPARE(alone.size(), 1u);
        QCOMPARE(alone[0].arrived.text(), clock(60));
    }
    void aVoidedArrivalIsNoVisit()
    {
        auto list = facts({visit(50, 2)});
        Fact voiding = list.front();
        voiding.id = uuid(51);
        voiding.body = VoidFact{uuid(50), "wrong house", "Dana"};
        list.push_back(voiding);
        QVERIFY(visitsOf(list).empty());
    }

    void whatSaysTheVisitByItselfNeedsNoOther()
    {
        const DecisionInput alone = jobs::input(analogFields(), analogFacts());
        // No visit anywhere, one visit of its own, and one in each of two orders.
        QCOMPARE(canonicalJson(shared(analogFacts(), {}).toJson()), canonicalJson(alone.toJson()));
        const QList<QJsonObject> told = analogFacts() << visit(50, 2, 60);
        const DecisionInput once = jobs::input(analogFields(), told);
        for (const QJsonObject &other : {visit(60, 2, 60), visit(60, 0, 70), visit(60, 4)}) {
            const DecisionInput both = shared(told, facts({other}, "A-1001"));
            QCOMPARE(canonicalJson(both.toJson()), canonicalJson(once.toJson()));
            QVERIFY(both.visits.empty());
        }
    }
    void aStoredInputWithVisitsReadsBack()
    {
        const auto others =
            facts({visit(60, 2, 60), fact(61, "self_test", 3, {{"outcome", "failed"}})}, "A-1001");
        const DecisionInput input = shared(analogFacts(), others);
        QCOMPARE(input.visits.size(), 1u);
        QCOMPARE(input.selfTests.size(), 1u);
        const auto read = DecisionInput::fromJson(input.toJson(), "input");
        QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
        QCOMPARE(canonicalJson(read->toJson()), canonicalJson(input.toJson()));
        QCOMPARE(canonicalJson(decide(*read, limits()).toJson()),
                 canonicalJson(decide(input, limits()).toJson()));
    }

    void theOtherLinesArrivalIsThisOnes()
    {
        const DecisionInput input = shared(analogFacts(), facts({visit(60, 2)}, "A-1001"));
        QCOMPARE(input.visits.size(), 1u);
        QCOMPARE(input.visits.front().orders, QStringList{"A-1001"});
        QCOMPARE(outcome(input, "safety"), "met");
    }
    void twoVisitsOfADayNeedACardEach()
    {
        // The card in the morning, a call that fails in the afternoon; both visits stand elsewhere.
        const QList<QJsonObject> own =
            analogFacts() << call(40, 310, "B1", "out", "voice", "2175550150", "failed");
        QCOMPARE(outcome(shared(own, {}), "calls"), "not_met"); // the day is the visit
        const auto others = facts({visit(60, 2, 60), visit(61, 300, 330)}, "A-1001");
        const DecisionInput input = shared(own, others);
        QCOMPARE(input.visits.size(), 2u);
        QCOMPARE(outcome(input, "calls"), "met"); // without a card it counts for nothing
        QCOMPARE(outcome(shared(own + QList{safety(41, 305)}, others), "calls"), "not_met");
    }
    void theSafetyCardIsNotShared()
    {
        QList<QJsonObject> own = analogFacts();
        own.removeFirst();
        const auto others = facts({visit(60, 2), safety(61, 3)}, "A-1001");
        QCOMPARE(outcome(shared(own, others), "safety"), "missing");
    }
    void anOtherInstallersVisitIsHisOwn()
    {
        QVERIFY(shared(analogFacts(), facts({visit(60, 2)}, "A-1001", "L2")).visits.empty());
    }
    void aVisitThatContradictsTheFactsLeavesTheDay()
    {
        // The other order says that he left before half of the facts were made.
        QVERIFY(shared(analogFacts(), facts({visit(60, 2, 12)}, "A-1001")).visits.empty());
        QVERIFY(shared(analogFacts(), facts({visit(60, 10)}, "A-1001")).visits.empty());
        // Nor does a leaving in another order cut the visit that this one records.
        const QList<QJsonObject> told = analogFacts() << visit(50, 2);
        QVERIFY(shared(told, facts({visit(60, 2, 12)}, "A-1001")).visits.empty());
    }
    void theSecondArrivalOfADayIsAnotherVisit()
    {
        const QList<QJsonObject> own =
            analogFacts() << visit(50, 2) << visit(51, 2, 60) << visit(52, 300)
                          << call(40, 310, "B1", "out", "voice", "2175550150", "failed");
        QCOMPARE(outcome(shared(own, {}), "calls"), "met");
        QCOMPARE(outcome(shared(own + QList{safety(41, 305)}, {}), "calls"), "not_met");
    }

    void aSelfTestOfTheVisitCountsForEveryLine()
    {
        const auto failed = fact(61, "self_test", 3, {{"outcome", "failed"}});
        const auto passed = fact(62, "self_test", 4, {{"outcome", "passed"}});
        QCOMPARE(outcome(shared(analogFacts(), facts({visit(60, 2), failed}, "A-1001")), "noise"),
                 "missing");
        QCOMPARE(outcome(shared(analogFacts(), facts({visit(60, 2), failed, passed}, "A-1001")),
                         "noise"),
                 "met");
        // It failed afterwards, on the same visit.
        const auto after = fact(63, "self_test", 40, {{"outcome", "failed"}});
        QCOMPARE(outcome(shared(analogFacts(), facts({visit(60, 2), after}, "A-1001")), "noise"),
                 "missing");
        // The visit is recorded here, the self-test there.
        const QList<QJsonObject> told = analogFacts() << visit(50, 2);
        QCOMPARE(outcome(shared(told, facts({failed}, "A-1001")), "noise"), "missing");
    }
    void aSelfTestOfAnotherVisitOrInstrumentDoesNot()
    {
        QJsonObject failed = fact(61, "self_test", 3, {{"outcome", "failed"}});
        // Without a visit fact nothing says that it was the same visit.
        QVERIFY(shared(analogFacts(), facts({failed}, "A-1001")).selfTests.empty());
        // Each order records its visit: each stands for itself.
        const QList<QJsonObject> told = analogFacts() << visit(50, 2, 60);
        QVERIFY(shared(told, facts({visit(60, 2, 60), failed}, "A-1001")).selfTests.empty());
        failed["instrument"] = "TS-9";
        QVERIFY(shared(analogFacts(), facts({visit(60, 2), failed}, "A-1001")).selfTests.empty());
    }

    void detectorCheckAndRunOnTheSharedVisit()
    {
        const auto others = facts({visit(60, 2)}, "A-2001");
        DecisionInput input = jobs::input(briFields(), briFacts());
        input.visits = shareVisits(input.facts, others).visits;
        QCOMPARE(input.visits.size(), 1u);
        QCOMPARE(outcome(input, "detector"), "met");
        // The check in the morning, the run in the afternoon: two visits of the other order.
        QList<QJsonObject> split = briFacts();
        split.removeLast();
        split << safety(70, 301) << run(71, 302);
        input = jobs::input(briFields(), split);
        QCOMPARE(outcome(input, "detector"), "met");
        input.visits =
            shareVisits(input.facts, facts({visit(60, 2, 60), visit(61, 300, 330)}, "A-2001"))
                .visits;
        QCOMPARE(outcome(input, "detector"), "missing");
        QCOMPARE(outcome(input, "safety"), "met");
    }
    void theOrderOfRecordingChangesNothing()
    {
        auto others = facts({visit(60, 2, 60), visit(61, 300, 330),
                             fact(62, "self_test", 301, {{"outcome", "passed"}})},
                            "A-1001");
        const QList<QJsonObject> own = analogFacts() + later(analogFacts(), 300, 80);
        const QByteArray first = canonicalJson(decide(shared(own, others), limits()).toJson());
        std::reverse(others.begin(), others.end());
        QCOMPARE(canonicalJson(decide(shared(own, others), limits()).toJson()), first);
    }
};

QTEST_GUILESS_MAIN(VisitsTest)
#include "VisitsTest.moc"
