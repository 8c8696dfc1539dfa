#include "core/acceptance/JobLine.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

namespace {

CriterionResult criterion(Station station, CriterionOutcome outcome, bool excepted = false)
{
    CriterionResult result;
    result.key = toText(station);
    result.station = station;
    result.outcome = outcome;
    if (excepted)
        result.excepted = Excepted{};
    return result;
}

/// The make-up of a pair that is fit.
QJsonObject shortPair()
{
    return {{"elements",
             QJsonArray{QJsonObject{{"type", "section"}, {"gauge_awg", 24}, {"length_ft", 4000}}}}};
}

QStringList words(const std::vector<StationState> &line)
{
    QStringList list;
    for (const StationState &state : line)
        list << state.word();
    return list;
}

} // namespace

class JobLineTest : public QObject
{
    Q_OBJECT

private slots:
    void stationsAreInTheOrderOfTheJob()
    {
        QStringList names;
        for (const StationState &state : jobLine({}, stageAt(Station::Identifiers)))
            names << state.name();
        QCOMPARE(names, (QStringList{"Order", "Identifiers", "Loop", "Safety", "Turn-up", "Calls",
                                     "Error test", "Acceptance", "Certificate"}));
    }

    void anAcceptedJob()
    {
        const DecisionInput input =
            jobs::input(jobs::briFields(),
                        jobs::briFacts() << jobs::fact(31, "loop", 1, {{"makeup", shortPair()}}));
        const Decision decision = decide(input, jobs::limits());
        QCOMPARE(
            words(jobLine(decision, stageAt(Station::Certificate))),
            (QStringList{"done", "done", "done", "done", "done", "done", "done", "done", "open"}));
        QVERIFY(jobLine(decision, stageAt(Station::Certificate)).back().next);
        QCOMPARE(jobLine(decision, Stage::Done).back().mark, StationMark::Done);
        QCOMPARE(nextSentence(decision, stageAt(Station::Certificate)).english(),
                 "Next: issue the certificate.");
        QCOMPARE(nextSentence(decision, Stage::Done).english(),
                 "Nothing is left but to complete the order.");
    }

    void anAnalogJobHasNoErrorTest()
    {
        const Decision decision =
            decide(jobs::input(jobs::analogFields(), jobs::analogFacts()), jobs::limits());
        const std::vector<StationState> line = jobLine(decision, stageAt(Station::Certificate));
        QCOMPARE(line[std::size_t(Station::ErrorTest)].word(), "not needed");
        QCOMPARE(line[std::size_t(Station::TurnUp)].word(), "done");
    }

    void nothingWasDoneYet()
    {
        const DecisionInput input = jobs::input(jobs::briFields(), {});
        const Decision decision = decide(input, jobs::limits());
        const std::vector<StationState> line = jobLine(decision, stageOf(decision, input, false));
        // Nobody knows the make-up: the desk's station is passed over, and needed all the same.
        QCOMPARE(line[std::size_t(Station::Loop)].mark, StationMark::Open);
        QCOMPARE(line[std::size_t(Station::Loop)].word(), "on site");
        QCOMPARE(line[std::size_t(Station::Safety)].mark, StationMark::Open);
        QVERIFY(line[std::size_t(Station::Safety)].next);
        QCOMPARE(line[std::size_t(Station::Acceptance)].mark, StationMark::Open);
        QCOMPARE(std::count_if(line.begin(), line.end(), [](const auto &s) { return s.next; }), 1);
        QCOMPARE(nextSentence(decision, stageAt(Station::Safety)).english(),
                 "Next: make the safety card before the pair is touched.");
    }

    void recordOnlyNeedsNoCertificate()
    {
        OrderFields fields = jobs::briFields();
        fields["order_type"] = "record_only";
        const Decision decision = decide(jobs::input(fields, {}), jobs::limits());
        const std::vector<StationState> line = jobLine(decision, stageAt(Station::Acceptance));
        QCOMPARE(line.back().mark, StationMark::NotNeeded);
        QCOMPARE(nextSentence(decision, stageAt(Station::Acceptance)).english(),
                 "Nothing is left but to complete the order.");
    }

    void marks_data()
    {
        QTest::addColumn<QList<int>>("outcomes"); // of one station's criteria; + 10: excepted
        QTest::addColumn<QString>("word");
        const int met = 0, notMet = 1, missing = 2, notNeeded = 3, excepted = 10;
        QTest::newRow("none") << QList<int>{} << "not needed";
        QTest::newRow("not needed") << QList<int>{notNeeded} << "not needed";
        QTest::newRow("met") << QList<int>{notNeeded, met} << "done";
        QTest::newRow("missing") << QList<int>{met, missing} << "open";
        QTest::newRow("not met beats missing") << QList<int>{missing, notMet, met} << "failed";
        QTest::newRow("not met first") << QList<int>{notMet, missing} << "failed";
        QTest::newRow("excepted") << QList<int>{met, notMet + excepted} << "excepted";
        QTest::newRow("excepted, and one open")
            << QList<int>{missing + excepted, missing} << "open";
        QTest::newRow("an exception that was not called on")
            << QList<int>{met + excepted} << "done";
    }
    void marks()
    {
        QFETCH(QList<int>, outcomes);
        Decision decision;
        for (const int outcome : outcomes)
            decision.criteria.push_back(
                criterion(Station::TurnUp, CriterionOutcome(outcome % 10), outcome >= 10));
        QTEST(jobLine(decision, stageAt(Station::TurnUp))[std::size_t(Station::TurnUp)].word(),
              "word");
    }

    void theSentenceIsThatOfTheNextStep()
    {
        Decision decision;
        decision.criteria.push_back(criterion(Station::Calls, CriterionOutcome::Missing));
        decision.criteria.front().next = "Make a call.";
        const Stage stage = stageAt(Station::Calls);
        Step done, closed, open;
        done.state = StepState::Done;
        closed.state = StepState::Closed;
        open.state = StepState::Open;
        open.because = "The card is not complete.";
        QCOMPARE(nextSentence({done, closed}, decision, stage).english(), "Next: make a call.");
        QCOMPARE(nextSentence({done, closed, open}, decision, stage).english(),
                 "Next: the card is not complete.");
        open.state = StepState::Failed;
        open.next = "Complete the card.";
        QCOMPARE(nextSentence({done, closed, open}, decision, stage).english(),
                 "Next: complete the card.");
        QCOMPARE(nextSentence(std::vector<Step>(), decision, stage).english(),
                 "Next: make a call.");
    }

    void theSentenceKeepsAChannelsCapital_data()
    {
        QTest::addColumn<QString>("next");
        QTest::addColumn<QString>("sentence");
        QTest::newRow("a word") << "Inject errors on B1."
                                << "Next: inject errors on B1.";
        QTest::newRow("a channel") << "B1 is to be tested."
                                   << "Next: B1 is to be tested.";
        QTest::newRow("none") << ""
                              << "Next: the reason.";
    }
    void theSentenceKeepsAChannelsCapital()
    {
        QFETCH(QString, next);
        Decision decision;
        decision.criteria.push_back(criterion(Station::Calls, CriterionOutcome::Missing));
        decision.criteria.front().next = Text::verbatim(next);
        decision.criteria.front().reason = "The reason.";
        QTEST(nextSentence(decision, stageAt(Station::Calls)).english(), "sentence");
    }
};

QTEST_APPLESS_MAIN(JobLineTest)
#include "JobLineTest.moc"
