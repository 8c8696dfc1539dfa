#include "core/loop/AnalogFact.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

class AnalogFactTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        for (const AnalogQuantityInfo &each : analogQuantities()) {
            const QByteArray key = toText(each.quantity).toLatin1();
            const QByteArray value = each.yesOrNo ? "false" : "7.25";
            const QByteArray unit = each.unit;
            QTest::addRow("%s with unit", key.constData())
                << QByteArray(R"({"quantity":")" + key + R"(","value":)" + value + R"(,"unit":")" +
                              unit + R"("})");
            QTest::addRow("%s without unit", key.constData())
                << QByteArray(R"({"quantity":")" + key + R"(","value":)" + value + "}");
        }
        QTest::newRow("megohm") << QByteArray(
            R"({"quantity":"insulation","value":0.25,"unit":"Mohm"})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        QCOMPARE(roundTripTrouble<AnalogFact>(text), QString());
    }
    void countsInTheQuantitysUnit()
    {
        const auto fact = readFact<AnalogFact>(
            parsedObject(R"({"quantity":"insulation","value":0.25,"unit":"Mohm"})"));
        QVERIFY(fact.has_value());
        QCOMPARE(std::get<double>(fact->value()), 250000.0);
        const auto polarity =
            readFact<AnalogFact>(parsedObject(R"({"quantity":"polarity","value":true})"));
        QVERIFY(polarity.has_value());
        QCOMPARE(std::get<bool>(polarity->value()), true);
    }
    void refuses_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        const auto row = [](const char *name, const char *text, const char *error) {
            QTest::newRow(name) << QByteArray(text) << QString::fromUtf8(error);
        };
        row("wrong unit", R"({"quantity":"loop_current","value":23,"unit":"A"})",
            "facts[0].unit: \"A\" does not fit loop current; its unit is mA");
        row("unweighted noise", R"({"quantity":"noise","value":23,"unit":"dBrn"})",
            "facts[0].unit: \"dBrn\" does not fit circuit noise; its unit is dBrnC");
        row("case counts", R"({"quantity":"loop_current","value":23,"unit":"ma"})",
            "facts[0].unit: \"ma\" does not fit loop current; its unit is mA");
        row("empty unit", R"({"quantity":"loop_current","value":23,"unit":""})",
            "facts[0].unit: \"\" does not fit loop current; its unit is mA");
        row("unit of an answer", R"({"quantity":"dial_tone","value":true,"unit":"dB"})",
            "facts[0].unit: \"dB\" does not fit dial tone; its unit is none (true or false)");
        row("answer for a number", R"({"quantity":"noise","value":true})",
            "facts[0].value: must be a number");
        row("number for an answer", R"({"quantity":"ringing","value":1})",
            "facts[0].value: must be true or false");
        row("out of range", R"({"quantity":"loop_current","value":-1,"unit":"mA"})",
            "facts[0].value: must be from 0 to 1000");
        row("unknown quantity", R"({"quantity":"mood","value":1})",
            "facts[0].quantity: \"mood\" is not one of loop_current, loss_1004, noise, "
            "power_influence, balance, polarity, dial_tone, ringing, slope, insulation, "
            "foreign_voltage, on_hook_voltage, ringing_voltage");
        row("no value", R"({"quantity":"noise"})", "facts[0].value: is required and missing");
        row("unknown key", R"({"quantity":"noise","value":3,"method":"x"})",
            "facts[0].method: is not a known key");
    }
    void refuses()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusal<AnalogFact>(text), error);
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(readsAnything<AnalogFact>({"quantity", "value", "unit"},
                                          allWords<AnalogQuantity>() +
                                              QStringList{"mA", "dB", "ohm", "V", "dBrnC"}));
    }
};

QTEST_APPLESS_MAIN(AnalogFactTest)
#include "AnalogFactTest.moc"
