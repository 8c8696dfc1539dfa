#include "core/acceptance/Handoff.h"

#include "tests/support/Handoffs.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;

namespace {

Handoff handoffOf(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    return jobs::handoffOf(fields, facts, {"Prairie", {}, "217-555-0172", "217-555-0173"});
}

QList<QJsonObject> with(int index, const QJsonObject &fact)
{
    QList<QJsonObject> facts = jobs::briFacts();
    facts[index] = fact;
    return facts;
}

} // namespace

class HandoffTest : public QObject
{
    Q_OBJECT

private slots:
    void ofARepairItSaysWhatIsTheTrouble()
    {
        OrderFields fields = jobs::briFields();
        QCOMPARE(handoffOf(fields, {}).trouble, "");
        fields["order_type"] = "repair";
        fields["symptom"] = "no dial tone";
        fields["desk_test"] = "open at 2000 ft";
        QCOMPARE(handoffOf(fields, {}).trouble, "no dial tone; from the desk: open at 2000 ft");
    }

    /// A handoff is never refused: what is known of the line stands on it all the same.
    void nothingIsOpen()
    {
        const Handoff handoff = handoffOf(jobs::briFields(), jobs::briFacts());
        QVERIFY(handoff.criterion.isEmpty());
        QVERIFY(handoff.alsoFailed.isEmpty() && handoff.notTried.isEmpty());
        QCOMPARE(handoff.circuit, "C-77");
        QCOMPARE(handoff.layers.size(), 6u);
    }

    void saysTheNextStep()
    {
        const auto handoff =
            handoffOf(jobs::briFields(),
                      with(3, jobs::fact(4, "layer", 15,
                                         {{"layer", 1}, {"interface", "u"}, {"outcome", "down"}})));
        QVERIFY(!handoff.next.isEmpty());
        QVERIFY(handoff.check.contains(handoff.next)); // the layer's first check
    }

    void aLayerThatIsDown_data()
    {
        QTest::addColumn<QList<QJsonObject>>("facts");
        QTest::addColumn<QString>("where");
        QTest::addColumn<QString>("cause");
        QTest::addColumn<QString>("part");
        QTest::addColumn<QString>("call");
        const auto layer = [](int n, QJsonObject body) {
            body.insert("outcome", "down");
            return with(n - 1, jobs::fact(n, "layer", 10 + n, body));
        };
        QTest::newRow("layer 1 at U")
            << layer(4, {{"layer", 1}, {"interface", "u"}}) << "layer 1 at U"
            << ""
            << "loop and outside plant"
            << "outside plant repair";
        QTest::newRow("layer 1 at S/T")
            << layer(5, {{"layer", 1}, {"interface", "st"}}) << "layer 1 at S/T"
            << ""
            << "premises wiring"
            << "wiring of the premises";
        QTest::newRow("layer 2") << layer(7, {{"layer", 2}, {"terminal", 2}})
                                 << "layer 2, terminal 2"
                                 << ""
                                 << "terminal equipment"
                                 << "supplied the terminal equipment";
        QTest::newRow("layer 3, the office's cause")
            << layer(8, {{"layer", 3}, {"terminal", 1}, {"cause", 57}}) << "layer 3, terminal 1"
            << "57, Bearer capability not authorised"
            << "serving office"
            << "the serving office, North Hill";
    }
    void aLayerThatIsDown()
    {
        QFETCH(QList<QJsonObject>, facts);
        QFETCH(QString, call);
        const auto handoff = handoffOf(jobs::briFields(), facts);
        QTEST(handoff.where, "where");
        QCOMPARE(handoff.whatFailed().count("layer", Qt::CaseInsensitive), 1);
        QTEST(handoff.cause, "cause");
        QTEST(handoff.part, "part");
        QVERIFY2(handoff.call.contains(call), qPrintable(handoff.call));
        QVERIFY(!handoff.meaning.isEmpty());
        QCOMPARE(handoff.check.size(), 2);
    }

    void aCallThatFailed()
    {
        QJsonObject call = jobs::call(13, 25, "B2", "out", "data", "2175550144", "failed");
        call.insert("cause", 65);
        QList<QJsonObject> facts = with(12, call);
        facts.removeLast(); // the self-call is a data call too
        const auto handoff = handoffOf(jobs::briFields(), facts);
        QCOMPARE(handoff.criterion, "calls");
        QCOMPARE(handoff.where, "B2, data, out");
        QCOMPARE(handoff.whatFailed(), "Calls, B2, data, out");
        QVERIFY(handoff.cause.startsWith("65, "));
        QCOMPARE(handoff.part, "serving office");
        QVERIFY(!handoff.notTried.isEmpty());
    }

    /// What failed has its row among the readings, also if no one figure speaks for it.
    void whatFailedIsAmongTheReadings()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[13]["seen_bit_errors"] = 12;
        const auto handoff = handoffOf(jobs::briFields(), facts);
        QCOMPARE(handoff.criterion, "detector");
        QVERIFY(std::ranges::any_of(handoff.readings, [](const HandoffReading &reading) {
            return reading.name == u"Detector check" && reading.outcome == CriterionOutcome::NotMet;
        }));
    }

    void aFailedRun()
    {
        QList<QJsonObject> facts = with(14, jobs::run(15, 32, 900, 120));
        facts << jobs::fact(16, "changed", 60, {{"what", "nt"}, {"text", "spare NT fitted"}})
              << jobs::fact(17, "note", 61, {{"text", "drop re-terminated"}});
        const auto handoff = handoffOf(jobs::briFields(), with(14, jobs::run(15, 32, 900, 120)));
        QCOMPARE(handoff.criterion, "run");
        QCOMPARE(handoff.part, "loop and outside plant");
        // One run over both channels is told once.
        QVERIFY2(handoff.reason.startsWith("B1 and B2: The run is over its limits"),
                 qPrintable(handoff.reason));
        QCOMPARE(handoff.reason.count("900 bit errors"), 1);
        // Its figures stand there alone; the list of what was done refers to them.
        QCOMPARE(handoff.done, QStringList{"Run: 4 March 2026, 08:32 (UTC-06:00), self-call on B1 "
                                           "and B2, 900 s: failed, as told above"});

        const auto later = handoffOf(jobs::briFields(), facts);
        QVERIFY(later.done.join('\n').contains("spare NT fitted"));
        QVERIFY(later.done.join('\n').contains("drop re-terminated"));
        QCOMPARE(later.recordedBy, "Pat Example");
        QCOMPARE(later.lastFact->text(), "2026-03-04T09:01:00-06:00");
    }

    /// What was not tried is nobody's fault.
    void missingEvidenceIsTheInstallersOwn()
    {
        const auto handoff = handoffOf(jobs::briFields(), jobs::briFacts().first(3));
        QCOMPARE(handoff.criterion, "layer1");
        QCOMPARE(handoff.part, "the installer's own work");
        QCOMPARE(handoff.check.size(), 1);
    }

    /// What is missing is told in the order of the work: no pair is measured before its card.
    void theCardIsMissingBeforeTheLoop()
    {
        const Handoff handoff = handoffOf(jobs::briFields(), {});
        QCOMPARE(handoff.criterion, "safety");
        QCOMPARE(handoff.check, QStringList{"Make the safety card before the pair is touched."});
        QVERIFY(handoff.notTried.join(' ').contains("Loop: "));
    }

    void aClosedHazardIsTold()
    {
        const QList<QJsonObject> hazard{
            jobs::safety(50, 1, 72),
            jobs::fact(51, "hazard_closed", 3,
                       {{"hazard", jobs::uuid(50)}, {"source", "induced"}, {"by", "J. Power"}})};
        const Handoff open = handoffOf(jobs::briFields(), hazard);
        QCOMPARE(open.hazards.size(), 1u);
        QVERIFY(open.closedHazards.isEmpty());
        const Handoff closed = handoffOf(jobs::briFields(), hazard + jobs::briFacts());
        QVERIFY(closed.hazards.empty());
        QCOMPARE(closed.closedHazards.size(), 1);
        QVERIFY2(closed.closedHazards.front().contains("72 V AC, tip to ground") &&
                     closed.closedHazards.front().contains("J. Power"),
                 qPrintable(closed.closedHazards.front()));
    }

    void aTroubleOfTheCardIsTold()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[0]["ac_v"] = jobs::voltages(4);
        QCOMPARE(handoffOf(jobs::briFields(), facts).toMend,
                 QStringList{"Safety card: A foreign voltage is to be cleared."});
        QVERIFY(handoffOf(jobs::briFields(), jobs::briFacts()).toMend.isEmpty());
    }

    void foreignBatteryIsAMatterOfTheLoop()
    {
        QJsonObject card = jobs::safety(1, 5);
        card["dc_v"] = QJsonObject{{"tip_ground", 24}, {"ring_ground", 0.2}, {"tip_ring", 24}};
        const Handoff handoff = handoffOf(jobs::briFields(), {card});
        QCOMPARE(handoff.criterion, "safety");
        QCOMPARE(handoff.part, "loop and outside plant");
        QVERIFY(handoff.check.front().startsWith("Find the cross"));
    }

    /// More seen than sent is no fault of the check: the line makes errors.
    void aCheckThatSeesTheLinesErrorsIsAMatterOfTheLoop()
    {
        QJsonObject check = jobs::detector(14, 30);
        check["seen_bit_errors"] = 12;
        const Handoff line = handoffOf(jobs::briFields(), with(13, check));
        QCOMPARE(line.criterion, "detector");
        QCOMPARE(line.part, "loop and outside plant");
        QVERIFY(line.check.front().startsWith("Find and mend what makes the errors"));
        check["seen_bit_errors"] = 2;
        const Handoff set = handoffOf(jobs::briFields(), with(13, check));
        QCOMPARE(set.part, "the installer's own work");
        QCOMPARE(set.check, QStringList{"Make the detector check again, then the run."});
    }

    void whatFailedGoesBeforeWhatIsMissing()
    {
        QList<QJsonObject> facts{
            jobs::safety(1, 5),
            jobs::fact(8, "layer", 19, {{"layer", 3}, {"terminal", 1}, {"outcome", "down"}})};
        const auto handoff = handoffOf(jobs::briFields(), facts);
        QCOMPARE(handoff.criterion, "layer3");
        QVERIFY(handoff.notTried.size() >= 3);
        QVERIFY(handoff.alsoFailed.isEmpty());
    }

    void everyCriterionHasAPart_data()
    {
        QTest::addColumn<bool>("analog");
        QTest::newRow("basic rate") << false;
        QTest::newRow("analog") << true;
    }
    void everyCriterionHasAPart()
    {
        QFETCH(bool, analog);
        const DecisionInput input = analog ? jobs::input(jobs::analogFields(), jobs::analogFacts())
                                           : jobs::input(jobs::briFields(), jobs::briFacts());
        const Decision whole = decide(input, jobs::limits());
        for (const CriterionResult &criterion : whole.criteria) {
            Decision decision;
            decision.criteria = {criterion};
            decision.criteria.front().outcome = CriterionOutcome::NotMet;
            const auto handoff = makeHandoff({input, decision, jobs::limits()});
            QVERIFY2(!handoff.part.isEmpty() && !handoff.call.isEmpty() && !handoff.check.isEmpty(),
                     qPrintable(criterion.key));
        }
    }

    void aHazardStandsFirst()
    {
        QJsonObject card = jobs::safety(1, 5, 214);
        card["place"] = "terminal 4";
        card["wet"] = true;
        const Handoff handoff = handoffOf(jobs::briFields(), {card});
        QCOMPARE(handoff.criterion, "safety");
        QCOMPARE(handoff.hazards.size(), 1u);
        const HandoffHazard &hazard = handoff.hazards.front();
        QCOMPARE(hazard.volts.size(), 3);
        QCOMPARE(hazard.volts.first(), "214 V AC, tip to ground (stop above 25 V)");
        QCOMPARE(hazard.place, "terminal 4");
        QCOMPARE(hazard.wet, "wet");
        QCOMPARE(hazard.pair, "17-204");
        QCOMPARE(hazard.readBy, "Pat Example");
        QCOMPARE(hazard.at.text(), "2026-03-04T08:05:00-06:00");
    }

    void aClosedHazardStandsThereNoMore()
    {
        const Handoff handoff =
            handoffOf(jobs::briFields(),
                      {jobs::safety(1, 5, 214),
                       jobs::fact(2, "hazard_closed", 20,
                                  {{"hazard", jobs::uuid(1)}, {"source", "meter"}, {"by", "Lee"}}),
                       jobs::safety(3, 30)});
        QVERIFY(handoff.hazards.empty());
    }

    void layersWithCauseAndLocation()
    {
        const Handoff handoff =
            handoffOf(jobs::briFields(), with(8, jobs::fact(9, "layer", 20,
                                                            {{"layer", 3},
                                                             {"terminal", 2},
                                                             {"outcome", "down"},
                                                             {"cause", 27},
                                                             {"cause_location", "public_local"}})));
        QCOMPARE(handoff.causeWhere, "from the serving switch");
        QVERIFY(handoff.reason.contains("The cause came " + handoff.causeWhere));
        QCOMPARE(handoff.layers.back().where, "layer 3, terminal 2");
        QCOMPARE(handoff.layers.back().state, "down");
        QVERIFY(handoff.layers.back().cause.endsWith("from the serving switch"));
        QCOMPARE(handoff.layers.front().state, "up");
    }

    void whomItWasReferredTo()
    {
        QList<QJsonObject> facts = jobs::briFacts().first(3);
        QVERIFY(!handoffOf(jobs::briFields(), facts).referred);
        facts << jobs::fact(20, "referred", 50,
                            {{"to", "cable desk"}, {"reference", "T-7"}, {"waiting_on", "plant"}});
        const auto referred = handoffOf(jobs::briFields(), facts).referred;
        QVERIFY(referred);
        QCOMPARE(referred->to, "cable desk");
        QCOMPARE(referred->reference, "T-7");
        QCOMPARE(referred->waitingOn, "plant");
        QCOMPARE(referred->by, "Pat Example");
    }

    /// The telephone of that part's desk; none is made up for a part that has no desk.
    void telephoneOfThePart()
    {
        const auto down = [](QJsonObject body, int n) {
            body.insert("outcome", "down");
            return handoffOf(jobs::briFields(), with(n - 1, jobs::fact(n, "layer", 10 + n, body)));
        };
        QCOMPARE(down({{"layer", 1}, {"interface", "u"}}, 4).telephone, "217-555-0173");
        QCOMPARE(down({{"layer", 2}, {"terminal", 2}}, 7).telephone, "");
        QCOMPARE(down({{"layer", 3}, {"terminal", 1}, {"cause", 57}}, 8).telephone, "217-555-0171");
    }

    void saysWhichLine()
    {
        OrderFields fields = jobs::briFields();
        fields["contact"] = "Kim, 217-555-0190";
        const auto handoff = handoffOf(fields, {});
        QCOMPARE(handoff.order, "A-1001");
        QCOMPARE(handoff.circuit, "C-77");
        QCOMPARE(handoff.pair, "17-204");
        QCOMPARE(handoff.contact, "Kim, 217-555-0190");
        QCOMPARE(handoff.office, "North Hill");
        QVERIFY(!handoff.lastFact);
    }
};

QTEST_APPLESS_MAIN(HandoffTest)
#include "HandoffTest.moc"
