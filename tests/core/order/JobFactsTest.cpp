#include "core/order/JobFacts.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

namespace {

const char oneReading[] = R"({"facts":["496ff731-a7ef-5e12-bb32-797ea0088083"]})";

} // namespace

class JobFactsTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame()
    {
        QCOMPARE(roundTripTrouble<ChangedFact>(R"({"what":"pair","to":"C7-990","text":"x"})"), "");
        QCOMPARE(roundTripTrouble<ChangedFact>(R"({"what":"feed"})"), "");
        QCOMPARE(roundTripTrouble<SelfTestFact>(R"({"outcome":"failed"})"), "");
        QCOMPARE(roundTripTrouble<ClearedFact>(R"({"what":"nt","text":"NT replaced"})"), "");
        QCOMPARE(roundTripTrouble<ClearedFact>(R"({"what":"nothing_found"})"), "");
        QCOMPARE(roundTripTrouble<ReferredFact>(R"({"to":"cable desk"})"), "");
        QCOMPARE(
            roundTripTrouble<ReferredFact>(R"({"to":"x","reference":"7","waiting_on":"permit"})"),
            "");
        QCOMPARE(roundTripTrouble<MadeWithFact>(oneReading), "");
        QCOMPARE(roundTripTrouble<DeskFact>(R"({"what":"cut_over","by":"Lee","text":"x"})"), "");
        QCOMPARE(roundTripTrouble<NoteFact>(R"({"text":"x"})"), "");
    }
    void refuses_data()
    {
        QTest::addColumn<QString>("error");
        QTest::addColumn<QString>("expected");
        QTest::newRow("another change has no new pair")
            << refusal<ChangedFact>(R"({"what":"nt","to":"C7-990"})")
            << "facts[0].to: is the new pair, and the pair was not changed";
        QTest::newRow("no pair") << refusal<ChangedFact>(R"({"what":"pair","to":" "})")
                                 << "facts[0].to: must not be empty";
        QTest::newRow("nothing said")
            << refusal<ClearedFact>(R"({"what":"nt"})") << "facts[0].text: is required and missing";
        QTest::newRow("one word") << refusal<ClearedFact>(R"({"what":"nt","text":" replaced "})")
                                  << "facts[0].text: must say in at least two words what was done";
        QTest::newRow("no reading")
            << refusal<MadeWithFact>(R"({"facts":[]})") << "facts[0].facts: must name at least one";
        QTest::newRow("no id") << refusal<MadeWithFact>(R"({"facts":["7"]})")
                               << "facts[0].facts[0]: is not a UUID";
        QTest::newRow("twice")
            << refusal<MadeWithFact>(
                   R"({"facts":["496ff731-a7ef-5e12-bb32-797ea0088083","496FF731-A7EF-5E12-BB32-797EA0088083"]})")
            << "facts[0].facts[1]: stands there twice";
        QTest::newRow("nobody") << refusal<ReferredFact>(R"({"waiting_on":"plant"})")
                                << "facts[0].to: is required and missing";
        QTest::newRow("empty note")
            << refusal<NoteFact>(R"({"text":" "})") << "facts[0].text: must not be empty";
    }
    void refuses()
    {
        QFETCH(QString, error);
        QFETCH(QString, expected);
        QCOMPARE(error, expected);
    }
    void readsAnyJsonWithoutHarm()
    {
        const QStringList keys{"what", "text", "to", "by", "reference", "waiting_on"};
        QVERIFY(readsAnything<ChangedFact>(keys, allWords<ChangedWhat>()));
        QVERIFY(readsAnything<ClearedFact>(keys, allWords<ClearedWhat>() << "two words"));
        QVERIFY(readsAnything<ReferredFact>(keys, allWords<WaitingOn>()));
        QVERIFY(readsAnything<DeskFact>(keys, allWords<DeskWhat>()));
        QVERIFY(readsAnything<MadeWithFact>({"facts"}, {"496ff731-a7ef-5e12-bb32-797ea0088083"}));
    }
};

QTEST_APPLESS_MAIN(JobFactsTest)
#include "JobFactsTest.moc"
