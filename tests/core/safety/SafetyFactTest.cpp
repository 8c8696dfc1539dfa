#include "core/safety/SafetyFact.h"

#include "tests/support/FactCodec.h"
#include "tests/support/Jobs.h"

using namespace loopwright;

namespace {

Voltages all(double volts)
{
    return {volts, volts, volts};
}

SafetyFact card(bool officeConnected, double ac, double dc)
{
    return {officeConnected, all(ac), all(dc),
            std::vector{CardKey::ForeignVoltage, CardKey::BondingGround, CardKey::Storm,
                        CardKey::WorkPosition}};
}

} // namespace

class SafetyFactTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("full") << QByteArray(
            R"({"office_connected":true,"ac_v":{"tip_ground":0.5,"ring_ground":1,"tip_ring":0},"dc_v":{"tip_ground":-0.1,"ring_ground":-52.1,"tip_ring":52},"confirmed":["storm","foreign_voltage","bonding_ground","work_position"]})");
        QTest::newRow("nothing") << QByteArray("{}");
        QTest::newRow("some readings")
            << QByteArray(R"({"office_connected":false,"ac_v":{"tip_ring":3},"dc_v":{}})");
        QTest::newRow("nothing confirmed") << QByteArray(R"({"confirmed":[]})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        QCOMPARE(roundTripTrouble<SafetyFact>(text), QString());
    }
    void refuses_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        QTest::newRow("unknown key of the card")
            << QByteArray(R"({"confirmed":["storm","weather"]})")
            << "facts[0].confirmed[1]: \"weather\" is not one of foreign_voltage, bonding_ground, "
               "storm, work_position";
        QTest::newRow("not a text")
            << QByteArray(R"({"confirmed":[true]})") << "facts[0].confirmed[0]: must be a text";
        QTest::newRow("unknown wires") << QByteArray(R"({"ac_v":{"tip_tip":1}})")
                                       << "facts[0].ac_v.tip_tip: is not a known key";
        QTest::newRow("not a number") << QByteArray(R"({"dc_v":{"tip_ring":"48"}})")
                                      << "facts[0].dc_v.tip_ring: must be a number";
        QTest::newRow("not an object")
            << QByteArray(R"({"dc_v":48})") << "facts[0].dc_v: must be an object";
        QTest::newRow("out of range") << QByteArray(R"({"dc_v":{"tip_ring":20001}})")
                                      << "facts[0].dc_v.tip_ring: must be from -20000 to 20000";
    }
    void refuses()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusal<SafetyFact>(text), error);
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(readsAnything<SafetyFact>({"office_connected", "ac_v", "dc_v", "confirmed",
                                           "tip_ground", "ring_ground", "tip_ring"},
                                          allWords<CardKey>()));
    }

    // Limits of the shipped set: AC above 50 V; DC above 10 V with the office disconnected, above
    // 56 V with it connected (common practice).
    void judges_data()
    {
        QTest::addColumn<bool>("connected");
        QTest::addColumn<double>("ac");
        QTest::addColumn<double>("dc");
        QTest::addColumn<QString>("outcome");
        QTest::addColumn<int>("troubles");
        QTest::newRow("dead and quiet") << false << 0.2 << 0.1 << "clear" << 0;
        QTest::newRow("one volt on a dead pair") << false << 1.0 << 0.0 << "clear" << 3;
        QTest::newRow("ten volts on a dead pair") << false << 0.0 << 10.0 << "clear" << 3;
        QTest::newRow("more than ten") << false << 0.0 << 10.001 << "hazard" << 0;
        QTest::newRow("fifty AC") << false << 50.0 << 0.0 << "clear" << 3;
        QTest::newRow("more than fifty AC") << false << 50.001 << 0.0 << "hazard" << 0;
        QTest::newRow("office battery") << true << 0.5 << -52.0 << "clear" << 0;
        QTest::newRow("fifty-six with office") << true << 0.0 << 56.0 << "clear" << 0;
        QTest::newRow("more than office battery") << true << 0.0 << -56.001 << "hazard" << 0;
        QTest::newRow("induced on a working pair") << true << 9.9 << 48.0 << "clear" << 0;
        QTest::newRow("too much of it") << true << 12.0 << 48.0 << "clear" << 3;
        QTest::newRow("ringing") << true << 90.0 << 48.0 << "hazard" << 0;
    }
    void judges()
    {
        QFETCH(bool, connected);
        QFETCH(double, ac);
        QFETCH(double, dc);
        QFETCH(QString, outcome);
        QFETCH(int, troubles);
        const SafetyVerdict verdict = judge(card(connected, ac, dc), m_limits);
        QVERIFY2(toText(verdict.outcome) == outcome, qPrintable(verdict.text()));
        QCOMPARE(int(verdict.troubles.size()), troubles);
        QVERIFY(verdict.missing.isEmpty());
        for (const VoltageFinding &hazard : verdict.hazards) {
            QVERIFY(hazard.toDo.startsWith("Stop, move away, report."));
            QVERIFY(hazard.reason.contains("more than"));
        }
        for (const VoltageFinding &trouble : verdict.troubles)
            QVERIFY(trouble.reason.endsWith("not a hazard"));
    }
    void namesThePairOfWires()
    {
        SafetyFact fact = card(false, 0, 0);
        fact.acV->ringGround = 118;
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.hazards.size(), std::size_t(1));
        QCOMPARE(verdict.hazards[0].pair, WirePair::RingGround);
        QCOMPARE(verdict.hazards[0].limitKey, QString("hazard_ac_v"));
        QCOMPARE(verdict.text(),
                 QString("Hazard: 118 V AC between ring and ground is more than 50 V. Stop, move "
                         "away, report."));
    }
    void namesWhatIsMissing()
    {
        SafetyFact fact = card(false, 0, 0);
        fact.acV->tipRing.reset();
        fact.dcV.reset();
        fact.confirmed = {CardKey::ForeignVoltage, CardKey::BondingGround, CardKey::WorkPosition};
        const SafetyVerdict verdict = judge(fact, m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Incomplete);
        QCOMPARE(verdict.missing,
                 (QStringList{"AC voltage, tip to ring", "DC voltage, tip to ground",
                              "DC voltage, ring to ground", "DC voltage, tip to ring",
                              "confirmation \"storm\""}));
        QVERIFY(verdict.text().contains("storm"));
    }
    void anEmptyCardIsIncomplete()
    {
        const SafetyVerdict verdict = judge(SafetyFact(), m_limits);
        QCOMPARE(verdict.outcome, SafetyOutcome::Incomplete);
        QCOMPARE(verdict.missing.size(), 11);
        QVERIFY(verdict.missing[0].contains("office"));
    }
    void aHazardComesBeforeAGap()
    {
        SafetyFact fact;
        fact.dcV = Voltages{{}, {}, 48.0};
        const SafetyVerdict verdict = judge(fact, m_limits);
        // The card does not say that the office explains it.
        QCOMPARE(verdict.outcome, SafetyOutcome::Hazard);
        QVERIFY(verdict.hazards[0].reason.contains("does not say"));
        QVERIFY(!verdict.missing.isEmpty());
    }
    void everyCardKeyHasItsSentence()
    {
        for (const QString &key : allWords<CardKey>())
            QVERIFY(cardSentence(*fromText<CardKey>(key)).endsWith('.'));
        QCOMPARE(wirePairName(WirePair::TipGround), QString("tip to ground"));
    }
};

QTEST_APPLESS_MAIN(SafetyFactTest)
#include "SafetyFactTest.moc"
