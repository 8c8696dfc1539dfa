#include "core/safety/VisitFact.h"

#include "tests/support/FactCodec.h"

using namespace loopwright;

class VisitFactTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("full") << QByteArray(
            R"({"arrived":"2026-03-04T09:15:00-06:00","left":"2026-03-04T11:00:00.250-06:00","result":"worked"})");
        QTest::newRow("nothing") << QByteArray("{}");
        QTest::newRow("no access") << QByteArray(R"({"result":"no_access"})");
        QTest::newRow("left at once") << QByteArray(
            R"({"arrived":"2026-03-04T09:15:00-06:00","left":"2026-03-04T16:15:00+01:00","result":"other"})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        QCOMPARE(roundTripTrouble<VisitFact>(text), QString());
    }
    void refuses_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        QTest::newRow("left before arriving")
            << QByteArray(
                   R"({"arrived":"2026-03-04T09:15:00-06:00","left":"2026-03-04T09:14:59-06:00"})")
            << "facts[0].left: is before the arrival";
        QTest::newRow("word") << QByteArray(R"({"result":"done"})")
                              << "facts[0].result: \"done\" is not one of worked, no_access, "
                                 "customer_not_ready, other";
        QTest::newRow("time") << QByteArray(R"({"arrived":"yesterday"})")
                              << "facts[0].arrived: must be a time in ISO 8601 with its offset, "
                                 "such as 2026-03-04T09:15:00-06:00";
    }
    void refuses()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusal<VisitFact>(text), error);
    }
    void readsAnyJsonWithoutHarm()
    {
        QVERIFY(readsAnything<VisitFact>(
            {"arrived", "left", "result"},
            {"2026-03-04T09:15:00-06:00", "2026-03-04T09:15Z", "worked", "other"}));
    }
};

QTEST_APPLESS_MAIN(VisitFactTest)
#include "VisitFactTest.moc"
