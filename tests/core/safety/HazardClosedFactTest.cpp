#include "core/safety/HazardClosedFact.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

class HazardClosedFactTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame()
    {
        QCOMPARE(
            roundTripTrouble<HazardClosedFact>(
                R"({"hazard":"496ff731-a7ef-5e12-bb32-797ea0088083","source":"power","by":"Lee","reference":"7"})"),
            "");
        QCOMPARE(
            roundTripTrouble<HazardClosedFact>(
                R"({"hazard":"496ff731-a7ef-5e12-bb32-797ea0088083","source":"mistyped","by":"Lee"})"),
            "");
    }
    void refuses()
    {
        QCOMPARE(
            refusal<HazardClosedFact>(R"({"source":"power","by":"Lee"})"),
            "facts[0].hazard: is required and missing: the id of the safety card that read the "
            "hazard");
        QCOMPARE(refusal<HazardClosedFact>(R"({"hazard":"7","source":"power","by":"Lee"})"),
                 "facts[0].hazard: is not a UUID");
        QCOMPARE(
            refusal<HazardClosedFact>(
                R"({"hazard":"496ff731-a7ef-5e12-bb32-797ea0088083","source":"power","by":" "})"),
            "facts[0].by: must not be empty");
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(readsAnything<HazardClosedFact>({"hazard", "source", "by", "reference"},
                                                allWords<HazardSource>()
                                                    << "496FF731-a7ef-5e12-bb32-797ea0088083"));
    }
};

QTEST_APPLESS_MAIN(HazardClosedFactTest)
#include "HazardClosedFactTest.moc"
