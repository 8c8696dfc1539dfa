#include "core/loop/RuleResult.h"

#include <QTest>

using namespace loopwright;

class RuleResultTest : public QObject
{
    Q_OBJECT
    const Limit m_limit{"x_max", 1300, "ohm", "DC resistance of the loop, at most", "somewhere"};

private slots:
    void atTheLimitIsMet()
    {
        QCOMPARE(atMost("x", m_limit, 1300, Suitability::NotSuitable).verdict,
                 Suitability::Suitable);
        QCOMPARE(atMost("x", m_limit, 1300.001, Suitability::NotSuitable).verdict,
                 Suitability::NotSuitable);
        QCOMPARE(atLeast("x", m_limit, 1300, Suitability::Marginal).verdict, Suitability::Suitable);
        QCOMPARE(atLeast("x", m_limit, 1299.999, Suitability::Marginal).verdict,
                 Suitability::Marginal);
    }
    void theLastBinaryDigitIsForgiven()
    {
        const double missed = 1300 * (1 + 1e-15);
        QVERIFY(missed > 1300);
        QCOMPARE(atMost("x", m_limit, missed, Suitability::NotSuitable).verdict,
                 Suitability::Suitable);
    }
    void saysFigureAndLimit()
    {
        const RuleResult rule = atMost("x", m_limit, 1402.4, Suitability::NotSuitable);
        QCOMPARE(rule.reason.english(),
                 QString("DC resistance of the loop: 1402 ohm, over 1300 ohm"));
        QCOMPARE(rule.source, QString("somewhere"));
        QCOMPARE(atMost("x", m_limit, 900, Suitability::NotSuitable).reason.english(),
                 QString("DC resistance of the loop: 900 ohm, within 1300 ohm"));
        QCOMPARE(figureText(41.7047, "dB"), QString("41.70 dB"));
        QCOMPARE(figureText(3, ""), QString("3"));
    }
    void aNarrowMissIsToldFromTheLimit()
    {
        QCOMPARE(atMost("x", m_limit, 1300.04, Suitability::NotSuitable).reason.english(),
                 QString("DC resistance of the loop: 1300.04 ohm, over 1300 ohm"));
        QCOMPARE(atLeast("x", m_limit, 1299.7, Suitability::Marginal).reason.english(),
                 QString("DC resistance of the loop: 1299.7 ohm, under 1300 ohm"));
        QCOMPARE(figureApart(42.001, 42, "dB"), QString("42.001 dB"));
        QCOMPARE(figureApart(42.5, 42, "dB"), QString("42.50 dB"));
        QCOMPARE(figureApart(5, 5, ""), QString("5"));
    }
    void theWorstDecides()
    {
        QCOMPARE(worstOf({}), Suitability::Suitable);
        const RuleResult good = atMost("x", m_limit, 1, Suitability::NotSuitable);
        const RuleResult fair = atMost("x", m_limit, 2000, Suitability::Marginal);
        const RuleResult bad = atMost("x", m_limit, 2000, Suitability::NotSuitable);
        QCOMPARE(worstOf({good, fair}), Suitability::Marginal);
        QCOMPARE(worstOf({fair, bad, good}), Suitability::NotSuitable);
        QCOMPARE(englishJson(reasonsOf({good})), QJsonArray{"Every rule is met"});
        QCOMPARE(reasonsOf({good, bad, fair}).size(), 2U);
        QCOMPARE(rulesJson({good, bad}).size(), 2);
        const RuleSet set{"k", "n", {good, bad}};
        QCOMPARE(set.toJson()["verdict"].toString(), QString("not_suitable"));
    }
};

QTEST_APPLESS_MAIN(RuleResultTest)
#include "RuleResultTest.moc"
