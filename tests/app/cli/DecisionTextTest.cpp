#include "app/cli/DecisionText.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

class DecisionTextTest : public QObject
{
    Q_OBJECT

private slots:
    /// Whoever goes there reads it before everything else, and once.
    void aHazardOfAnotherPairAtThePremisesStandsFirst()
    {
        DecisionInput input = jobs::input(jobs::briFields(), jobs::briFacts());
        const OrderFields beside =
            jobs::otherBriFields("A-2", "C-2", "17-300", "217-555-0152", "217-555-0153");
        input.premisesCards = jobs::input(beside, {jobs::safety(50, 1, 72)}).facts;
        const Decision decision = decide(input, jobs::limits());
        QCOMPARE(decision.outcome, OrderOutcome::Accepted);
        const QString text = decisionText(decision);
        QVERIFY2(text.startsWith("On another pair at these premises: Hazard: 72 V AC"),
                 qPrintable(text));
        QCOMPARE(text.count("On another pair"), 1);
        // Stored with the notes, as their first.
        QVERIFY(decision.notesInEnglish().front().startsWith("On another pair"));
    }

    /// The class stands beside the outcome, and what was excepted says what it was.
    void theClassAndWhatWasExceptedAreTold()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[2]["loss_db"] = 43.6;
        DecisionInput input = jobs::input(jobs::briFields(), facts);
        QStringList known;
        for (const Fact &fact : input.facts)
            known << fact.id;
        input.facts.push_back({jobs::uuid(70),
                               *Moment::parse(u"2026-03-04T12:00:00-06:00"),
                               input.order.number,
                               {},
                               {},
                               {},
                               ExceptionFact{{"loop"}, "changed in April", "hale", known}});
        const QString text = decisionText(decide(input, jobs::limits())).simplified();
        for (const char *said :
             {"Loop not met, poor (excepted) 43.6 dB",
              "above the limit of 42 dB. Excepted by hale, 4 March 2026, 12:00 (UTC-06:00): "
              "changed in April"})
            QVERIFY2(text.contains(said), qPrintable(text));
    }

    /// A card that is clear, and a pair that is fit, leave something to do all the same.
    void whatIsToBeMendedIsTold()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[0]["ac_v"] = jobs::voltages(4);
        facts[2]["dc_resistance_ohm"] = 1250;
        facts[2]["loss_db"] = 41;
        facts[2]["makeup"] = QJsonObject{
            {"elements",
             QJsonArray{QJsonObject{{"type", "section"}, {"gauge_awg", 26}, {"length_ft", 6000}}}}};
        const Decision decision = decide(jobs::input(jobs::briFields(), facts), jobs::limits());
        QCOMPARE(decision.outcome, OrderOutcome::Accepted);
        const QString text = decisionText(decision).simplified();
        for (const char *said : {"A foreign voltage is to be cleared.", "the record is wrong.",
                                 "Have the record of the pair mended."})
            QVERIFY2(text.contains(said), qPrintable(text));
    }
};

QTEST_APPLESS_MAIN(DecisionTextTest)
#include "DecisionTextTest.moc"
