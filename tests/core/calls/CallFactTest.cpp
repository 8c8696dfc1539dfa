#include "core/calls/CallFact.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

class CallFactTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("full") << QByteArray(
            R"({"channel":"B2","dn":"217-555-0143","direction":"in","service":"data","outcome":"failed","cause":127,"announced_dn":"2175550143","announced_service":"voice"})");
        QTest::newRow("least") << QByteArray(
            R"({"channel":"D","direction":"out","service":"packet","outcome":"ok"})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        QCOMPARE(roundTripTrouble<CallFact>(text), QString());
    }
    void refuses_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        const auto row = [](const char *name, const char *text, const char *error) {
            QTest::newRow(name) << QByteArray(text) << QString::fromUtf8(error);
        };
        row("channel", R"({"channel":"B3","direction":"out","service":"data","outcome":"ok"})",
            "facts[0].channel: \"B3\" is not one of B1, B2, D");
        row("service", R"({"channel":"B1","direction":"out","service":"fax","outcome":"ok"})",
            "facts[0].service: \"fax\" is not one of voice, data, packet");
        row("no direction", R"({"channel":"B1","service":"data","outcome":"ok"})",
            "facts[0].direction: is required and missing");
        row("cause",
            R"({"channel":"B1","direction":"out","service":"data","outcome":"failed","cause":128})",
            "facts[0].cause: must be from 1 to 127");
        row("cause 0",
            R"({"channel":"B1","direction":"out","service":"data","outcome":"failed","cause":0})",
            "facts[0].cause: must be from 1 to 127");
        row("unknown",
            R"({"channel":"B1","direction":"out","service":"data","outcome":"ok","rate":64000})",
            "facts[0].rate: is not a known key");
    }
    void refuses()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusal<CallFact>(text), error);
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(readsAnything<CallFact>(
            {"channel", "dn", "direction", "service", "outcome", "cause", "announced_dn",
             "announced_service"},
            {"B1", "B2", "D", "out", "in", "voice", "data", "packet", "ok", "failed"}));
    }
};

QTEST_APPLESS_MAIN(CallFactTest)
#include "CallFactTest.moc"
