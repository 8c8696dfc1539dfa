#include "core/loop/AnalogQuantity.h"

#include "tests/support/Jobs.h"
#include "tests/support/LoopGenerators.h"

#include <QTest>

#include <cmath>

using namespace loopwright;
using Quantity = AnalogQuantity;

class AnalogQuantityTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    // Every boundary: the value at it, and one just to either side (limits and boundary rule of the
    // shipped set: at the limit counts as the better class, except noise and foreign voltage).
    void everyBoundary_data()
    {
        QTest::addColumn<Quantity>("quantity");
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("expected");
        const auto row = [](Quantity quantity, double value, const char *expected) {
            QTest::addRow("%s %.10g", qPrintable(toText(quantity)), value)
                << quantity << value << QString::fromLatin1(expected);
        };
        row(Quantity::LoopCurrent, 19.9999, "poor");
        row(Quantity::LoopCurrent, 20, "marginal");
        row(Quantity::LoopCurrent, 22.9999, "marginal");
        row(Quantity::LoopCurrent, 23, "good");
        row(Quantity::LoopCurrent, 60, "good");
        row(Quantity::LoopCurrent, 60.0001, "marginal");
        row(Quantity::LoopCurrent, 120, "marginal");
        row(Quantity::LoopCurrent, 120.0001, "poor");
        row(Quantity::Loss1004, -2, "good");
        row(Quantity::Loss1004, 8.5, "good");
        row(Quantity::Loss1004, 8.5001, "marginal");
        row(Quantity::Loss1004, 10, "marginal");
        row(Quantity::Loss1004, 10.0001, "poor");
        row(Quantity::Noise, 19.9999, "good");
        row(Quantity::Noise, 20, "marginal");
        row(Quantity::Noise, 30, "marginal");
        row(Quantity::Noise, 30.0001, "poor");
        row(Quantity::PowerInfluence, 80, "good");
        row(Quantity::PowerInfluence, 80.0001, "marginal");
        row(Quantity::PowerInfluence, 90, "marginal");
        row(Quantity::PowerInfluence, 90.0001, "poor");
        row(Quantity::Balance, 60, "good");
        row(Quantity::Balance, 59.9999, "marginal");
        row(Quantity::Balance, 50, "marginal");
        row(Quantity::Balance, 49.9999, "poor");
        row(Quantity::Slope, 7.5, "good");
        row(Quantity::Slope, 7.5001, "marginal");
        row(Quantity::Slope, -7.5001, "marginal");
        row(Quantity::Slope, 10, "marginal");
        row(Quantity::Slope, 10.0001, "poor");
        row(Quantity::Insulation, 1e6, "good");
        row(Quantity::Insulation, 999999, "marginal");
        row(Quantity::Insulation, 40000, "marginal");
        row(Quantity::Insulation, 39999, "poor");
        row(Quantity::ForeignVoltage, 0.9999, "good");
        row(Quantity::ForeignVoltage, -0.9999, "good");
        row(Quantity::ForeignVoltage, 1, "marginal");
        row(Quantity::ForeignVoltage, 10, "marginal");
        row(Quantity::ForeignVoltage, 10.0001, "poor");
        row(Quantity::ForeignVoltage, -48, "poor");
        row(Quantity::OnHookVoltage, 38.9999, "poor");
        row(Quantity::OnHookVoltage, 39, "marginal");
        row(Quantity::OnHookVoltage, 42.4999, "marginal");
        row(Quantity::OnHookVoltage, 42.5, "good");
        row(Quantity::OnHookVoltage, -48, "good");
        row(Quantity::OnHookVoltage, 56, "good");
        row(Quantity::OnHookVoltage, 56.0001, "poor");
        row(Quantity::RingingVoltage, 65, "good");
        row(Quantity::RingingVoltage, 64.9999, "marginal");
        row(Quantity::RingingVoltage, 40, "marginal");
        row(Quantity::RingingVoltage, 39.9999, "poor");
    }
    void everyBoundary()
    {
        QFETCH(Quantity, quantity);
        QFETCH(double, value);
        QFETCH(QString, expected);
        QCOMPARE(toText(classify(quantity, value, m_limits)), expected);
    }
    void answers()
    {
        for (const Quantity quantity :
             {Quantity::Polarity, Quantity::DialTone, Quantity::Ringing}) {
            QCOMPARE(classify(quantity, true, m_limits), QuantityClass::Good);
            QCOMPARE(classify(quantity, false, m_limits), QuantityClass::Poor);
            QCOMPARE(classify(quantity, 1.0, m_limits), QuantityClass::Poor);
        }
        QCOMPARE(classify(Quantity::Noise, false, m_limits), QuantityClass::Poor);
        QCOMPARE(classify(Quantity::Noise, std::nan(""), m_limits), QuantityClass::Poor);
    }

    void tellsItsLimits_data()
    {
        QTest::addColumn<Quantity>("quantity");
        QTest::addColumn<QString>("text");
        QTest::newRow("loss") << Quantity::Loss1004 << "good to 8.5 dB, marginal to 10 dB";
        QTest::newRow("noise") << Quantity::Noise << "good below 20 dBrnC, marginal to 30 dBrnC";
        QTest::newRow("balance") << Quantity::Balance << "good from 60 dB, marginal from 50 dB";
        QTest::newRow("current") << Quantity::LoopCurrent
                                 << "good from 23 mA, marginal from 20 mA; good to 60 mA, marginal "
                                    "to 120 mA";
        QTest::newRow("insulation")
            << Quantity::Insulation << "good from 1 Mohm, marginal from 40 kohm";
        QTest::newRow("on-hook") << Quantity::OnHookVoltage
                                 << "good from 42.5 V, marginal from 39 V; good to 56 V";
        QTest::newRow("polarity") << Quantity::Polarity << "tip positive to ring";
    }
    void tellsItsLimits()
    {
        QFETCH(Quantity, quantity);
        QFETCH(QString, text);
        QCOMPARE(limitText(quantity, m_limits).english(), text);
    }
    void namesASourceOfEach()
    {
        for (const AnalogQuantityInfo &each : analogQuantities()) {
            const AnalogValue value = each.yesOrNo
                                          ? AnalogValue(true)
                                          : AnalogValue(each.min + (each.max - each.min) / 3);
            QVERIFY(!limitSource(each.quantity, value, m_limits).isEmpty());
            QVERIFY(qstrlen(each.name) > 0 && qstrlen(each.definition) > 0);
            QVERIFY(unitFactor(each.quantity, QString::fromUtf8(each.unit)).has_value());
        }
    }
    // S.C. Code Regs. 103-663.3: below 8.5 dB, below 20 dBrnC, above 20 mA, below 90 dBrnC, above
    // 60 dB; Hawaii Adm. Rules 6-80-97: 8.5 dB as designed, 10 dB and 30 dBrnC kept; 83 Ill. Adm.
    // Code 730.525: 10.0 dB, at least 20 mA, at most 90 dBrnC, at least 40,000 ohm.
    void namesTheSourceOfTheBoundThatDecided_data()
    {
        QTest::addColumn<Quantity>("quantity");
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("source");
        const QString carolina = "S.C. Code Regs. 103-663.3", hawaii = "Hawaii Adm. Rules 6-80-97",
                      illinois = "83 Ill. Adm. Code 730.525";
        QTest::newRow("loss below") << Quantity::Loss1004 << 8.4 << hawaii + " and " + carolina;
        QTest::newRow("loss at it") << Quantity::Loss1004 << 8.5 << hawaii;
        QTest::newRow("loss marginal")
            << Quantity::Loss1004 << 9.0 << hawaii + " and " + illinois + "(c)";
        QTest::newRow("loss poor")
            << Quantity::Loss1004 << 11.0 << hawaii + " and " + illinois + "(c)";
        QTest::newRow("noise good") << Quantity::Noise << 19.9 << carolina;
        QTest::newRow("noise marginal") << Quantity::Noise << 29.0 << hawaii;
        QTest::newRow("noise poor") << Quantity::Noise << 31.0 << hawaii;
        QTest::newRow("current good") << Quantity::LoopCurrent << 23.0 << "common practice";
        QTest::newRow("current at the bound") << Quantity::LoopCurrent << 20.0 << illinois + "(g)";
        QTest::newRow("current marginal")
            << Quantity::LoopCurrent << 21.0 << illinois + "(g) and " + carolina;
        QTest::newRow("current high")
            << Quantity::LoopCurrent << 70.0 << "published equipment practice";
        QTest::newRow("influence at the bound")
            << Quantity::PowerInfluence << 90.0 << illinois + "(h)";
        QTest::newRow("balance at the bound") << Quantity::Balance << 60.0 << "common practice";
        QTest::newRow("balance above") << Quantity::Balance << 61.0 << carolina;
        QTest::newRow("insulation marginal") << Quantity::Insulation << 50000.0 << illinois + "(b)";
    }
    void namesTheSourceOfTheBoundThatDecided()
    {
        QFETCH(Quantity, quantity);
        QFETCH(double, value);
        QTEST(limitSource(quantity, value, m_limits), "source");
    }
    void needsEightOnEveryOrder()
    {
        QStringList always;
        for (const AnalogQuantityInfo &each : analogQuantities())
            if (each.always)
                always << toText(each.quantity);
        QCOMPARE(always.join(' '), QString("loop_current loss_1004 noise power_influence balance "
                                           "polarity dial_tone ringing"));
    }
    void picksTheNearestBoundOfGood()
    {
        QCOMPARE(goodLimit(Quantity::LoopCurrent, 21, m_limits), 23.0);
        QCOMPARE(goodLimit(Quantity::LoopCurrent, 70, m_limits), 60.0);
        QCOMPARE(goodLimit(Quantity::Loss1004, 2, m_limits), 8.5);
        QCOMPARE(goodLimit(Quantity::Polarity, 0, m_limits), 0.0);
    }
    void printsValues()
    {
        QCOMPARE(valueText(Quantity::LoopCurrent, 31.5).english(), QString("31.5 mA"));
        QCOMPARE(valueText(Quantity::Insulation, 2.5e6).english(), QString("2.5 Mohm"));
        QCOMPARE(valueText(Quantity::Polarity, false).english(), QString("reversed"));
        QCOMPARE(valueText(Quantity::DialTone, true).english(), QString("heard"));
    }

    void balanceAtTheLimitIsGood()
    {
        // In binary 80.1 - 20.1 is less than 60.
        QVERIFY(80.1 - 20.1 != 60.0);
        QCOMPARE(balanceDb(80.1, 20.1), 60.0);
        QCOMPARE(classify(Quantity::Balance, balanceDb(80.1, 20.1), m_limits), QuantityClass::Good);
        QCOMPARE(slopeDb(5.0, 6.0, 13.0), 7.0);
        QCOMPARE(slopeDb(2.0, 9.0, 10.0), 7.0);
    }

    // I = V / (feed + loop + set): 48 V, 400 ohm, 430 ohm; two published-style examples, one
    // decimal (computed with NumPy).
    void predictsCurrent()
    {
        QVERIFY(std::abs(predictedLoopCurrentMa(1300) - 22.5) < 0.05);
        QVERIFY(std::abs(predictedLoopCurrentMa(1300, {42.75, 400, 430}) - 20.1) < 0.05);
        QVERIFY(std::abs(predictedLoopCurrentMa(0) - 57.8) < 0.05);
    }
    // 26 AWG, 900 ohm to 600 ohm, 1004 Hz, two decimals; slope of 18 kft, one decimal (computed
    // with NumPy).
    void predictsLossAndSlope()
    {
        LoopMakeup makeup;
        makeup.elements = {LoopElement::section(Wire::awg(26), {15000, LengthUnit::Foot})};
        QVERIFY(std::abs(predictAnalog(makeup).loss1004Db - 7.08) < 0.0051);
        makeup.elements[0].length.value = 18000;
        QVERIFY(std::abs(predictAnalog(makeup).loss1004Db - 8.66) < 0.0051);
        QVERIFY(std::abs(predictAnalog(makeup).slopeDb - 6.7) < 0.051);
        QVERIFY(std::abs(predictAnalog(makeup).dcResistanceOhm - 18 * 83.475) < 1e-6);
    }
};

QTEST_APPLESS_MAIN(AnalogQuantityTest)
#include "AnalogQuantityTest.moc"
