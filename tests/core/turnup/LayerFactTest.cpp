#include "core/turnup/LayerFact.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

class LayerFactTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("layer 1") << QByteArray(R"({"layer":1,"interface":"st","outcome":"up"})");
        QTest::newRow("layer 2") << QByteArray(
            R"({"layer":2,"terminal":8,"outcome":"up","tei":127})");
        QTest::newRow("layer 3") << QByteArray(
            R"({"layer":3,"terminal":1,"outcome":"down","cause":100})");
        QTest::newRow("least") << QByteArray(R"({"layer":2,"outcome":"down"})");
        QTest::newRow("first TEI, first cause")
            << QByteArray(R"({"layer":2,"outcome":"down","tei":0,"cause":1})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        QCOMPARE(roundTripTrouble<LayerFact>(text), QString());
    }
    void refuses_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        const auto row = [](const char *name, const char *text, const char *error) {
            QTest::newRow(name) << QByteArray(text) << QString::fromUtf8(error);
        };
        row("layer", R"({"layer":4,"outcome":"up"})", "facts[0].layer: must be from 1 to 3");
        row("no layer", R"({"outcome":"up"})", "facts[0].layer: is required and missing");
        row("no outcome", R"({"layer":1})", "facts[0].outcome: is required and missing");
        row("interface", R"({"layer":1,"interface":"s","outcome":"up"})",
            "facts[0].interface: \"s\" is not one of u, st");
        row("terminal", R"({"layer":2,"terminal":9,"outcome":"up"})",
            "facts[0].terminal: must be from 1 to 8");
        row("tei", R"({"layer":2,"outcome":"up","tei":128})",
            "facts[0].tei: must be from 0 to 127");
        row("cause 0", R"({"layer":3,"outcome":"down","cause":0})",
            "facts[0].cause: must be from 1 to 127");
        row("cause 128", R"({"layer":3,"outcome":"down","cause":128})",
            "facts[0].cause: must be from 1 to 127");
        row("half a cause", R"({"layer":3,"outcome":"down","cause":16.5})",
            "facts[0].cause: must be a whole number");
    }
    void refuses()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusal<LayerFact>(text), error);
    }
    void leftOutMeansTheFirst()
    {
        const auto fact = readFact<LayerFact>({{"layer", 1}, {"outcome", "up"}});
        QVERIFY(fact.has_value());
        QCOMPARE(fact->interfaceOrU(), LineInterface::U);
        QCOMPARE(fact->terminalOrFirst(), 1);
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(
            readsAnything<LayerFact>({"layer", "interface", "terminal", "outcome", "tei", "cause"},
                                     {"u", "st", "up", "down"}));
    }
};

QTEST_APPLESS_MAIN(LayerFactTest)
#include "LayerFactTest.moc"
