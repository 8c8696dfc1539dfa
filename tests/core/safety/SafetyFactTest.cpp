#include "core/safety/SafetyFact.h"

#include "tests/support/FactCodec.h"
#include "tests/support/Jobs.h"

using namespace loopwright;

class SafetyFactTest : public QObject
{
    Q_OBJECT

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
};

QTEST_APPLESS_MAIN(SafetyFactTest)
#include "SafetyFactTest.moc"
