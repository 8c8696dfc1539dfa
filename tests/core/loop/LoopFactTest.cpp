#include "core/loop/LoopFact.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

class LoopFactTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("resistance") << QByteArray(R"({"dc_resistance_ohm":751.3})");
        QTest::newRow("loss") << QByteArray(R"({"loss_db":23.9,"frequency_hz":40000})");
        QTest::newRow("all") << QByteArray(
            R"({"dc_resistance_ohm":0,"loss_db":-1,"frequency_hz":1004,"makeup":{"temperature_f":70,"elements":[{"type":"section","gauge_awg":26,"length_ft":9000}]}})");
        QTest::newRow("make-up alone") << QByteArray(
            R"({"makeup":{"elements":[{"type":"section","diameter_mm":0.5,"length_m":900}]}})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        QCOMPARE(roundTripTrouble<LoopFact>(text), QString());
    }
    void refuses_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        QTest::newRow("nothing") << QByteArray("{}")
                                 << "facts[0]: holds none of dc_resistance_ohm, loss_db and makeup";
        QTest::newRow("negative") << QByteArray(R"({"dc_resistance_ohm":-1})")
                                  << "facts[0].dc_resistance_ohm: must be from 0 to 1e+06";
        QTest::newRow("within the make-up")
            << QByteArray(
                   R"({"makeup":{"elements":[{"type":"section","gauge_awg":26,"length_ft":true}]}})")
            << "facts[0].makeup.elements[0].length_ft: must be a number";
        QTest::newRow("unknown within the make-up")
            << QByteArray(
                   R"({"makeup":{"elements":[{"type":"load_coil","millihenry":88}],"pair":"7"}})")
            << "facts[0].makeup.pair: is not a known key";
        QTest::newRow("unknown") << QByteArray(R"({"loss_db":3,"loss":3})")
                                 << "facts[0].loss: is not a known key";
    }
    void refuses()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusal<LoopFact>(text), error);
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(readsAnything<LoopFact>({"dc_resistance_ohm", "loss_db", "frequency_hz", "makeup",
                                         "elements", "type", "millihenry"},
                                        {"load_coil", "section"}));
    }
};

QTEST_APPLESS_MAIN(LoopFactTest)
#include "LoopFactTest.moc"
