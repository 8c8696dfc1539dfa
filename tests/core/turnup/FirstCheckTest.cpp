#include "core/turnup/FirstCheck.h"

#include <QTest>

using namespace loopwright;

class FirstCheckTest : public QObject
{
    Q_OBJECT

    static LayerFact down(int layer, std::optional<int> cause = {})
    {
        LayerFact fact;
        fact.layer = layer;
        fact.cause = cause;
        return fact;
    }

private slots:
    // The steps that an installer confirms in order, and Q.850 causes (common practice).
    void points_data()
    {
        QTest::addColumn<int>("layer");
        QTest::addColumn<QString>("interface");
        QTest::addColumn<int>("tei");
        QTest::addColumn<int>("cause");
        QTest::addColumn<QString>("part");
        QTest::addColumn<QString>("word");
        QTest::newRow("no sync at U") << 1 << "u" << -1 << 0 << "loop"
                                      << "pair";
        QTest::newRow("no interface named") << 1 << "" << -1 << 0 << "loop"
                                            << "pair";
        QTest::newRow("no sync at S/T") << 1 << "st" << -1 << 0 << "premises_wiring"
                                        << "100 ohm at the network termination";
        QTest::newRow("no TEI") << 2 << "" << -1 << 0 << "terminal"
                                << "fixed TEI";
        QTest::newRow("no data link") << 2 << "" << 64 << 0 << "terminal"
                                      << "multipoint";
        QTest::newRow("layer 3") << 3 << "" << -1 << 0 << "terminal"
                                 << "SPID";
        QTest::newRow("wrong SPID") << 3 << "" << -1 << 100 << "terminal"
                                    << "digit by digit";
        QTest::newRow("variant") << 3 << "" << -1 << 96 << "terminal"
                                 << "variant";
        QTest::newRow("not subscribed") << 3 << "" << -1 << 50 << "serving_office"
                                        << "services";
        QTest::newRow("bearer") << 3 << "" << -1 << 57 << "serving_office"
                                << "services";
        QTest::newRow("temporary failure") << 3 << "" << -1 << 41 << "serving_office"
                                           << "report the cause";
        QTest::newRow("timer") << 2 << "" << 64 << 102 << "premises_wiring"
                               << "wiring";
        QTest::newRow("no user responding") << 3 << "" << -1 << 18 << "terminal"
                                            << "Power";
        QTest::newRow("out of order") << 3 << "" << -1 << 27 << "loop"
                                      << "Layers 1 and 2";
        QTest::newRow("a cause that says nothing of the line") << 3 << "" << -1 << 16 << "terminal"
                                                               << "SPID";
        QTest::newRow("a cause does not change layer 1") << 1 << "u" << -1 << 57 << "loop"
                                                         << "pair";
    }
    void points()
    {
        QFETCH(int, layer);
        QFETCH(QString, interface);
        QFETCH(int, tei);
        QFETCH(int, cause);
        QFETCH(QString, part);
        QFETCH(QString, word);
        LayerFact fact = down(layer, cause > 0 ? std::optional(cause) : std::nullopt);
        fact.interface = fromText<LineInterface>(interface);
        if (tei >= 0)
            fact.tei = tei;
        const FirstCheck check = firstCheck(fact);
        QCOMPARE(toText(check.part), part);
        const QString said = check.check.english();
        QVERIFY2(said.contains(word), qPrintable(said));
    }
    void everyCauseHasAnAnswer()
    {
        for (int layer = 1; layer <= 3; ++layer)
            for (int cause = 1; cause <= 127; ++cause) {
                const FirstCheck check = firstCheck(down(layer, cause));
                QVERIFY(!check.meaning.isEmpty() && !check.check.isEmpty() &&
                        !check.then.isEmpty());
                QVERIFY(!partName(check.part).isEmpty());
            }
    }
};

QTEST_APPLESS_MAIN(FirstCheckTest)
#include "FirstCheckTest.moc"
