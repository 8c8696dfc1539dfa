#include "core/safety/SafetyVerdict.h"

#include "tests/support/Jobs.h"

using namespace loopwright;

namespace {

const std::vector everyKey{CardKey::ForeignVoltage, CardKey::BondingGround, CardKey::Storm,
                           CardKey::WorkPosition};

SafetyFact card(std::optional<bool> officeConnected, const Voltages &ac, const Voltages &dc)
{
    return {officeConnected, ac, dc, everyKey};
}

/// Readings that fit each other: the ring is the hot wire.
Voltages onRing(double volts)
{
    return {0, -volts, volts};
}

QString sentences(const std::vector<Text> &texts)
{
    return Text::joined(texts, "; ").english();
}

} // namespace

class SafetyVerdictTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    // Stop limits of the shipped set, from memory: AC above 50 V, 25 V where it is wet, DC above
    // 60 V; from 10 V DC on a pair whose office is disconnected is foreign battery.
    void judges_data()
    {
        QTest::addColumn<bool>("connected");
        QTest::addColumn<bool>("wet");
        QTest::addColumn<double>("ac");
        QTest::addColumn<double>("dc");
        QTest::addColumn<QString>("outcome");
        QTest::addColumn<int>("troubles");
        QTest::newRow("dead and quiet") << false << false << 0.2 << 0.1 << "clear" << 0;
        QTest::newRow("one volt on a dead pair") << false << false << 1.0 << 0.0 << "clear" << 2;
        QTest::newRow("less than foreign battery") << false << false << 0.0 << 9.9 << "clear" << 2;
        QTest::newRow("foreign battery") << false << false << 0.0 << 10.0 << "foreign_battery" << 0;
        QTest::newRow("foreign battery at the stop limit")
            << false << false << 0.0 << 60.0 << "foreign_battery" << 0;
        QTest::newRow("more than that") << false << false << 0.0 << 60.001 << "hazard" << 0;
        QTest::newRow("fifty AC") << false << false << 50.0 << 0.0 << "clear" << 2;
        QTest::newRow("more than fifty AC") << false << false << 50.001 << 0.0 << "hazard" << 0;
        QTest::newRow("25 AC where it is wet") << false << true << 25.0 << 0.0 << "clear" << 2;
        QTest::newRow("more where it is wet") << false << true << 25.001 << 0.0 << "hazard" << 0;
        QTest::newRow("office battery") << true << false << 0.5 << -52.0 << "clear" << 0;
        QTest::newRow("sixty with the office") << true << false << 0.0 << 60.0 << "clear" << 0;
        QTest::newRow("span power") << true << false << 0.0 << -130.0 << "hazard" << 0;
        QTest::newRow("induced on a working pair") << true << false << 9.9 << 48.0 << "clear" << 0;
        QTest::newRow("too much of it") << true << false << 12.0 << 48.0 << "clear" << 2;
        QTest::newRow("ringing") << true << false << 90.0 << 48.0 << "hazard" << 0;
    }
    void judges()
    {
        QFETCH(bool, connected);
        QFETCH(bool, wet);
        QFETCH(double, ac);
        QFETCH(double, dc);
        QFETCH(QString, outcome);
        QFETCH(int, troubles);
        SafetyFact fact = card(connected, {0, ac, ac}, onRing(dc));
        fact.wet = wet;
        const SafetyVerdict verdict = judge(fact, m_limits);
        QVERIFY2(toText(verdict.outcome) == outcome, qPrintable(verdict.text().english()));
        QCOMPARE(int(verdict.troubles.size()), troubles);
        QVERIFY(verdict.missing.empty());
        for (const VoltageFinding &hazard : verdict.hazards) {
            QVERIFY(hazard.toDo.english().startsWith("Stop, move away, report."));
            QVERIFY(hazard.reason.english().contains("more than"));
        }
        for (const VoltageFinding &trouble : verdict.troubles)
            QVERIFY(trouble.reason.english().endsWith("not a hazard"));
    }
    void namesThePairOfWires()
    {
        SafetyFact fact = card(false, {0, 118, 118}, {0, 0, 0});
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.hazards.size(), std::size_t(2));
        QCOMPARE(verdict.hazards[0].pair, WirePair::RingGround);
        QCOMPARE(verdict.hazards[0].limitKey, QString("hazard_ac_v"));
        QCOMPARE(verdict.text().english(),
                 QString("Hazard: 118 V AC between ring and ground is more than 50 V; 118 V AC "
                         "between tip and ring is more than 50 V. Stop, move away, report."));
    }
    void aClearCardPromisesNothing()
    {
        const SafetyVerdict verdict = judge(card(true, {0, 0, 0}, onRing(48)), m_limits);
        QCOMPARE(verdict.text("08:05").english(),
                 QString("No reading above the stop limits at 08:05; still treat it as live."));
    }
    void whatTheOfficeNamesIsNotSafe()
    {
        SafetyFact fact = card(true, {0, 0, 0}, {0, -130, 130});
        fact.namedByOffice = NamedVoltage{"the frame", "span power", -130};
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Hazard);
        const QString toDo = verdict.hazards[0].toDo.english();
        QVERIFY2(toDo.contains("span power") && toDo.contains("tagged") &&
                     toDo.contains("prove the pair dead"),
                 qPrintable(toDo));
    }
    void aBatteryThatTheOfficeNamesIsNoOtherLine()
    {
        SafetyFact fact = card(false, {0, 0, 0}, {0, -24, 24});
        const QString other = judge(fact, m_limits).text().english();
        QVERIFY2(other.contains("battery of another line"), qPrintable(other));
        fact.namedByOffice = NamedVoltage{"the frame", "test battery", -24};
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::ForeignBattery); // named is not dead
        QCOMPARE(verdict.text().english(),
                 QString("Foreign battery: 24 V DC between ring and ground although the office is "
                         "disconnected: the frame names it (test battery); 24 V DC between tip and "
                         "ring although the office is disconnected: the frame names it (test "
                         "battery)."));
        QVERIFY(verdict.batteries[0].toDo.english().contains("prove the pair dead"));
    }
    void namesWhatIsMissing()
    {
        SafetyFact fact = card(false, {0, 0, {}}, {0, 0, 0});
        fact.dcV.reset();
        fact.confirmed = {CardKey::ForeignVoltage, CardKey::BondingGround, CardKey::WorkPosition};
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Incomplete);
        QCOMPARE(sentences(verdict.missing),
                 QString("AC voltage, tip to ring; DC voltage, tip to ground; DC voltage, ring to "
                         "ground; DC voltage, tip to ring; the confirmation of storm"));
        QVERIFY(verdict.text().english().contains("storm"));
    }
    void anEmptyCardIsIncomplete()
    {
        const SafetyVerdict verdict = judge(SafetyFact(), m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Incomplete);
        QCOMPARE(verdict.missing.size(), std::size_t(11));
        QVERIFY(verdict.missing[0].english().contains("office"));
    }
    void aHazardComesBeforeAGapAndBeforeAMisfit()
    {
        SafetyFact fact;
        fact.dcV = Voltages{{}, {}, 148.0};
        QCOMPARE(judge(fact, m_limits).outcome, SafetyOutcome::Hazard);
        // The three cannot all be true; one of them would kill.
        const SafetyVerdict verdict = judge(card(false, {0, 120, 6}, {0, 0, 0}), m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Hazard);
        QCOMPARE(verdict.misfits.size(), std::size_t(1));
    }

    // Kirchhoff's law of voltages; 2 V or 5 %.
    void fits_data()
    {
        QTest::addColumn<bool>("alternating");
        QTest::addColumn<QList<double>>("volts");
        QTest::addColumn<bool>("fits");
        const auto row = [](const char *name, bool alternating, const QList<double> &volts,
                            bool fits) { QTest::newRow(name) << alternating << volts << fits; };
        row("battery on ring", false, {0, -48, 48}, true);
        row("battery reversed", false, {-48, 0, -48}, true);
        row("balanced feed", false, {24, -24, 48}, true);
        row("balanced feed, no minus typed", false, {24, 24, 48}, true);
        row("both on one wire, no minus typed", false, {30, 30, 0}, true);
        row("within two volts", false, {0, -8, 6}, true);
        row("beyond two volts", false, {0, -8, 5.9}, false);
        row("within five per cent", false, {0, -56, 53.2}, true);
        row("beyond five per cent", false, {0, -56, 53.1}, false);
        row("open tip under the meter's load", false, {0, -48, 2}, false);
        row("a sum with a minus typed", false, {24, -24, 0}, false);
        row("quiet", true, {0.3, 0.3, 0.3}, true);
        row("induced alike on both", true, {20, 20, 0}, true);
        row("one wire", true, {0, 18, 18}, true);
        row("between the others", true, {10, 12, 22}, true);
        row("power contact under the meter's load", true, {0, 40, 6}, false);
        row("more between than both have", true, {5, 5, 14}, false);
    }
    void fits()
    {
        QFETCH(bool, alternating);
        QFETCH(QList<double>, volts);
        QFETCH(bool, fits);
        const Voltages read{volts[0], volts[1], volts[2]}, none{0, 0, 0};
        const SafetyVerdict verdict =
            judge(card(true, alternating ? read : none, alternating ? none : read), m_limits);
        QCOMPARE(verdict.misfits.empty(), fits);
        QCOMPARE(verdict.outcome, fits ? SafetyOutcome::Clear : SafetyOutcome::Incomplete);
        if (!fits)
            QVERIFY(verdict.text().english().contains("prove the ground lead, read again"));
    }
    void likeReadingsTwiceStandAsATrouble()
    {
        const SafetyFact first = card(true, {0, 0, 0}, {0, -48, 2});
        const SafetyFact again = card(true, {0, 0, 0}, {0, -47, 3});
        const SafetyFact other = card(true, {0, 0, 0}, {0, -30, 3});
        QCOMPARE(judge(first, m_limits).outcome, SafetyOutcome::Incomplete);
        const SafetyVerdict verdict = judge(again, m_limits, &first);
        QCOMPARE(verdict.outcome, SafetyOutcome::Clear);
        QVERIFY(verdict.readTwice);
        QVERIFY(verdict.text().english().contains("read twice"));
        QCOMPARE(judge(other, m_limits, &first).outcome, SafetyOutcome::Incomplete);
    }
    void oneKindReadTwiceDoesNotVouchForTheOther()
    {
        const SafetyFact first = card(true, {0, 0, 0}, {0, -48, 2});
        const SafetyFact again = card(true, {0, 40, 6}, {0, -48, 2});
        QCOMPARE(judge(again, m_limits, &first).outcome, SafetyOutcome::Incomplete);
        const SafetyFact acFirst = card(true, {0, 40, 6}, {0, 0, 0});
        QCOMPARE(judge(again, m_limits, &acFirst).outcome, SafetyOutcome::Incomplete);
    }
    void tellsThatTheMeterWasNotProved()
    {
        SafetyFact fact = card(false, {0, 0, 0}, {0, 0, 0});
        fact.meterProved = false;
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Clear); // never refused for it
        QVERIFY(verdict.text().english().contains("not proved"));
    }
    void everyCardKeyHasItsSentence()
    {
        for (const QString &key : allWords<CardKey>())
            QVERIFY(cardSentence(*fromText<CardKey>(key)).english().endsWith('.'));
        QCOMPARE(wirePairName(WirePair::TipGround), QString("tip to ground"));
    }
};

QTEST_APPLESS_MAIN(SafetyVerdictTest)
#include "SafetyVerdictTest.moc"
