#include "core/certificate/Slips.h"

#include "core/certificate/CertificateNumber.h"
#include "core/certificate/PlainWords.h"
#include "tests/support/Certificates.h"

#include <QTest>

using namespace loopwright;
using certificates::sources;

namespace {

/// The job up to its measurements of the pair, then handed on.
QList<QJsonObject> begun(double acVolts)
{
    QList<QJsonObject> facts = jobs::briFacts().first(3);
    facts[0] = jobs::safety(1, 5, acVolts);
    return facts;
}

LeaveBehindSlip slipOf(const QList<QJsonObject> &facts, OrderFields fields = jobs::briFields())
{
    const auto slip = leaveBehindSlip(sources(fields, facts), {});
    if (!slip)
        qFatal("%s", qPrintable(slip.error().text()));
    return *slip;
}

QJsonObject referred(const char *waitingOn)
{
    return jobs::fact(40, "referred", 60,
                      {{"to", "the trouble desk"},
                       {"reference", "T-44"},
                       {"waiting_on", QString::fromLatin1(waitingOn)}});
}

} // namespace

class SlipsTest : public QObject
{
    Q_OBJECT

private slots:
    void saysWhatWasDoneAndWhatIsMissing()
    {
        const LeaveBehindSlip slip = slipOf(begun(0.2));
        QVERIFY(slip.done.join(' ').contains("is fit for this service"));
        QVERIFY(slip.missing.join(' ').contains("how many errors the line makes"));
        QCOMPARE(slip.visited, "4 March 2026, by Pat Example");
        QCOMPARE(slip.call.name, "order A-1001");
        QCOMPARE(slip.next, QStringList{"The line is due on 6 March 2026."});
    }

    void aRepairIsToldAsOne()
    {
        OrderFields fields = jobs::briFields();
        fields["order_type"] = "repair";
        fields["symptom"] = "no dial tone since Monday";
        const LeaveBehindSlip slip = slipOf(begun(0.2), fields);
        QCOMPARE(slip.symptom, "no dial tone since Monday");
        QCOMPARE(slip.next, QStringList{"The repair is due on 6 March 2026."});
        QCOMPARE(slipOf(begun(0.2)).symptom, "");
        const auto mended = leaveBehindSlip(sources(fields, jobs::briFacts()), {});
        QVERIFY(!mended);
        QVERIFY2(mended.error().message.contains("works again"),
                 qPrintable(mended.error().message));
    }

    /// Of wires that nobody may touch no slip says that they are fit.
    void besideAHazardNothingOfThePairIsDone()
    {
        const LeaveBehindSlip slip = slipOf(begun(120));
        QVERIFY2(!slip.done.join(' ').contains("fit"), qPrintable(slip.done.join(' ')));
        QVERIFY(!slip.done.isEmpty()); // its numbers are in order all the same
        QVERIFY(slip.next.front().startsWith("A dangerous voltage was read on the pair of wires."));
    }

    /// A slip or close-out never denies a hazard that was read and closed.
    void aClosedHazardIsTold()
    {
        const QList<QJsonObject> hazard{jobs::safety(50, 1, 72),
                                        jobs::fact(51, "hazard_closed", 3,
                                                   {{"hazard", jobs::uuid(50)},
                                                    {"source", "induced"},
                                                    {"by", "J. Power"},
                                                    {"reference", "PU-77"}})};
        const LeaveBehindSlip slip = slipOf(hazard + begun(0.2));
        const QString done = slip.done.join(' ');
        QVERIFY2(done.contains("A dangerous voltage was read on the pair, and its cause was "
                               "closed; after that no reading was above the stop limits."),
                 qPrintable(done));
        QVERIFY(!done.contains("before any work; no reading was above"));
        QCOMPARE(slip.hazards.size(), 1);
        for (const char *said : {"72 V AC, tip to ground", "induced by power lines", "J. Power",
                                 "PU-77", "No reading was above the stop limits on"})
            QVERIFY2(slip.hazards.front().contains(said), qPrintable(slip.hazards.front()));

        const auto closeOut =
            closeOutSlip(sources(jobs::briFields(), hazard + jobs::briFacts()), {});
        QVERIFY(closeOut);
        QCOMPARE(closeOut->hazards, slip.hazards);
        // Said to be closed, and no clear card yet.
        const QString missing = slipOf(hazard).missing.front();
        QVERIFY2(missing.contains("still to be made"), qPrintable(missing));
    }

    /// A trouble of the card is told in the customer's words, on the certificate too.
    void aTroubleOfTheCardIsTold()
    {
        const auto card = [](int n, int minute) {
            QJsonObject card = jobs::safety(n, minute);
            card["dc_v"] = QJsonObject{{"tip_ground", 0}, {"ring_ground", -48}, {"tip_ring", 2}};
            card["office_connected"] = true;
            return card;
        };
        QList<QJsonObject> facts = jobs::briFacts();
        facts[0] = card(1, 5);
        facts.prepend(card(50, 3));
        facts[1]["meter_proved"] = false;
        const CertificateSources from = sources(jobs::briFields(), facts);
        QCOMPARE(from.decision.outcome, OrderOutcome::Accepted);
        const QString meaning = plainMeaning(*from.decision.criterion("safety"));
        QVERIFY2(meaning.contains("an open wire, a leak or an open ground is to be cleared") &&
                     meaning.contains("The meter was not proved"),
                 qPrintable(meaning));
        const CertificateContent content = certificates::content(from);
        QVERIFY(std::ranges::any_of(content.criteria, [&](const CertificateCriterion &each) {
            return each.key == u"safety" && each.meaning == meaning;
        }));
    }

    /// All six voltages were read: nothing is incomplete.
    void foreignBatteryIsNoIncompleteCard()
    {
        QList<QJsonObject> facts = begun(0.2).first(1);
        facts[0]["dc_v"] = QJsonObject{{"tip_ground", 24}, {"ring_ground", 0.2}, {"tip_ring", 24}};
        const QString missing = slipOf(facts).missing.join(' ');
        QVERIFY2(!missing.contains("is not complete"), qPrintable(missing));
        QVERIFY2(missing.contains("A voltage from elsewhere is on the pair"), qPrintable(missing));
    }

    /// What failed in a detector check is said as its figures have it.
    void aDetectorCheckIsNotContradicted_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QJsonValue>("value");
        QTest::addColumn<QString>("says");
        QTest::newRow("more seen") << "seen_bit_errors" << QJsonValue(12)
                                   << "More errors were seen than were sent on purpose";
        QTest::newRow("fewer seen")
            << "seen_bit_errors" << QJsonValue(2) << "the test set did not see each one";
        QTest::newRow("not cleared")
            << "cleared" << QJsonValue(false) << "were not set back to zero";
        QTest::newRow("quiet errors") << "quiet_bit_errors" << QJsonValue(4)
                                      << "Errors were seen before any was sent on purpose";
        QTest::newRow("quiet too short")
            << "quiet_seconds" << QJsonValue(5) << "not watched long enough";
    }
    void aDetectorCheckIsNotContradicted()
    {
        QFETCH(QString, key);
        QFETCH(QJsonValue, value);
        QFETCH(QString, says);
        QList<QJsonObject> facts = jobs::briFacts();
        facts[13][key] = value;
        const QString missing = slipOf(facts).missing.join(' ');
        QVERIFY2(missing.contains(says), qPrintable(missing));
        QCOMPARE(missing.contains("did not see each one"), says.contains("did not see each one"));
    }

    /// Also in the certificate: the measurement decides, and the record is to be mended.
    void aWrongRecordIsTold()
    {
        QList<QJsonObject> facts = begun(0.2);
        facts[2]["dc_resistance_ohm"] = 1250;
        facts[2]["loss_db"] = 41;
        facts[2]["makeup"] = QJsonObject{
            {"elements",
             QJsonArray{QJsonObject{{"type", "section"}, {"gauge_awg", 26}, {"length_ft", 6000}}}}};
        const QString done = slipOf(facts).done.join(' ');
        QVERIFY2(done.contains("The record of the pair does not agree with what was measured"),
                 qPrintable(done));
    }

    /// The desk reads it back: deciding again on the same evidence gives the same number.
    void theCompletionNumberStaysWithTheEvidence()
    {
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        const QString number = completionNumber(from.decision);
        const QString digest = from.decision.digest();
        from.input.instruments.front().calibrations << Calibration{QDate(2026, 9, 1), {}};
        from.input.takenIn = certificates::moment("2026-03-01T08:00:00-06:00");
        from.decision = decide(from.input, from.limits);
        QVERIFY(from.decision.digest() != digest);
        QCOMPARE(completionNumber(from.decision), number);
        QList<QJsonObject> again = jobs::briFacts();
        again << jobs::detector(20, 60) << jobs::run(21, 62);
        QVERIFY(completionNumber(sources(jobs::briFields(), again).decision) != number);
    }

    /// What the customer's desk must know of an order that was accepted by exception.
    void theCloseOutListsExceptions()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts.last()["bit_errors"] = 900;
        facts.last()["errored_seconds"] = 120;
        CertificateSources from = sources(jobs::briFields(), facts);
        from.input.facts.push_back(
            certificates::exception(90, from.input, {"run"}, "agreed in writing"));
        from.decision = decide(from.input, from.limits);
        const auto slip = closeOutSlip(from, {});
        QVERIFY(slip);
        QCOMPARE(slip->outcome, "Accepted by exception");
        QCOMPARE(slip->exceptions.size(), 1);
        for (const char *said :
             {"Error-rate run, not met: ", "900 bit errors", "Robin Sample", "agreed in writing"})
            QVERIFY2(slip->exceptions.front().contains(said), qPrintable(slip->exceptions.front()));
    }

    void saysWhatItWaitsFor_data()
    {
        QTest::addColumn<QString>("says");
        QTest::newRow("customer") << "it waits for you: please call the number below.";
        QTest::newRow("plant") << "it waits for the cable crew.";
        QTest::newRow("power_utility") << "it waits for the power company.";
    }
    void saysWhatItWaitsFor()
    {
        QFETCH(QString, says);
        QList<QJsonObject> facts = begun(0.2);
        facts << referred(QTest::currentDataTag());
        const QString next = slipOf(facts).next.front();
        QVERIFY2(next.startsWith("On 4 March 2026, 09:00 (UTC-06:00) your order was handed on to: "
                                 "the trouble desk, reference T-44; "),
                 qPrintable(next));
        QVERIFY2(next.endsWith(says), qPrintable(next));
    }

    void whatTestSetsWereUsedIsNotDenied()
    {
        // Named, and read before the day of its calibration: it was said which one.
        CertificateSources from = sources(jobs::briFields(), begun(0.2));
        from.input.instruments.clear();
        from.decision = decide(from.input, from.limits);
        const auto slip = leaveBehindSlip(from, {});
        QVERIFY(slip);
        QVERIFY2(!slip->missing.join(' ').contains("It was not said"),
                 qPrintable(slip->missing.join(' ')));
    }

    void refused_data()
    {
        QTest::addColumn<QString>("column");
        QTest::addColumn<QString>("says");
        QTest::newRow("no premises") << "premises"
                                     << "names no premises";
        QTest::newRow("no customer") << "customer"
                                     << "names no customer";
    }
    void refused()
    {
        QFETCH(QString, column);
        QFETCH(QString, says);
        OrderFields fields = jobs::briFields();
        fields.remove(column);
        const auto slip = leaveBehindSlip(sources(fields, begun(0.2)), {});
        QVERIFY(!slip);
        QVERIFY2(slip.error().message.contains(says), qPrintable(slip.error().message));
    }

    void eachSlipForItsOutcome()
    {
        const CertificateSources accepted = sources(jobs::briFields(), jobs::briFacts());
        const CertificateSources open = sources(jobs::briFields(), begun(0.2));
        QVERIFY(!leaveBehindSlip(accepted, {}));
        QVERIFY(!closeOutSlip(open, {}));
        const auto slip = closeOutSlip(accepted, {});
        QVERIFY(slip);
        QCOMPARE(slip->completionNumber, completionNumber(accepted.decision));
        QCOMPARE(slip->outcome, "Accepted");
        QVERIFY(std::ranges::any_of(slip->readings, [](const auto &each) {
            return each.first == u"Loop" && each.second.value == u"612 ohm";
        }));
    }
};

QTEST_APPLESS_MAIN(SlipsTest)
#include "SlipsTest.moc"
