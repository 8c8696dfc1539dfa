#include "core/loop/PlantDesign.h"

#include "tests/support/Jobs.h"
#include "tests/support/Loops.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::loops;

Q_DECLARE_METATYPE(LoopMakeup)

class PlantDesignTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

    static QString notMet(const RuleSet &set)
    {
        QStringList keys;
        for (const RuleResult &rule : set.rules)
            if (rule.verdict != Suitability::Suitable)
                keys << QString(rule.key + ':' + toText(rule.verdict));
        return keys.join(' ');
    }
    static LoopElement metric(double diameter, double metres)
    {
        return LoopElement::section(Wire::millimetres(diameter), {metres, LengthUnit::Metre});
    }

private slots:
    // Older design, from memory: 1300 ohm, load coils beyond 18 kft.
    void resistance_data()
    {
        QTest::addColumn<LoopMakeup>("loop");
        QTest::addColumn<QString>("expected");
        QTest::newRow("short") << makeup({section(24, 12000)}) << "";
        QTest::newRow("1300 ohm and more")
            << makeup({section(26, 15600)}) << "rd_resistance:not_suitable";
        QTest::newRow("18 kft") << makeup({section(22, 18000)}) << "";
        QTest::newRow("long, unloaded")
            << makeup({section(22, 18001)}) << "rd_load_coils:not_suitable";
        QTest::newRow("long, loaded")
            << makeup({section(22, 9000), coil(), section(22, 12000)}) << "";
        QTest::newRow("short, loaded")
            << makeup({section(22, 3000), coil(), section(22, 6000)}) << "rd_load_coils:marginal";
    }
    void resistance()
    {
        QFETCH(LoopMakeup, loop);
        QFETCH(QString, expected);
        QCOMPARE(notMet(resistanceDesign(loop, m_limits)), expected);
    }

    // Revision, from memory: to 18 kft 1300 ohm, no coils, taps to 6 kft; to 24 kft 1500 ohm,
    // coils, end section with taps 3 to 12 kft; beyond: carrier.
    void revised_data()
    {
        QTest::addColumn<LoopMakeup>("loop");
        QTest::addColumn<QString>("expected");
        QTest::newRow("short") << makeup({section(24, 12000), tap(24, 6000)}) << "";
        QTest::newRow("taps") << makeup({section(24, 12000), tap(24, 6001)})
                              << "rrd_tap_total:not_suitable";
        QTest::newRow("21 kft, loaded")
            << makeup({section(22, 9000), coil(), section(22, 12000)}) << "";
        QTest::newRow("end section too long")
            << makeup({section(22, 9000), coil(), section(22, 12000), tap(24, 100)})
            << "rrd_end_section_max:marginal";
        QTest::newRow("end section too short")
            << makeup({section(22, 18000), coil(), section(22, 2900)})
            << "rrd_end_section_min:marginal";
        // 24 AWG: 1500 ohm at 28.6 kft, so mixed with 26 AWG.
        QTest::newRow("over 1500 ohm") << makeup({section(26, 16000), coil(), section(24, 4000)})
                                       << "rrd_resistance:not_suitable";
        QTest::newRow("1400 ohm on 20 kft")
            << makeup({section(26, 10000), coil(), section(24, 10000)}) << "";
        QTest::newRow("beyond copper")
            << makeup({section(19, 15000), coil(), section(19, 9001)}) << "rrd_length:not_suitable";
    }
    void revised()
    {
        QFETCH(LoopMakeup, loop);
        QFETCH(QString, expected);
        QCOMPARE(notMet(revisedResistanceDesign(loop, m_limits)), expected);
    }

    // Published equipment practice: 61223026L2-5A p. 21 and 363-718-104 p. 19.
    void servingArea_data()
    {
        QTest::addColumn<LoopMakeup>("loop");
        QTest::addColumn<QString>("expected");
        QTest::newRow("26 AWG, 9 kft") << makeup({section(26, 9000)}) << "";
        QTest::newRow("26 AWG, longer") << makeup({section(26, 9001)}) << "csa_length:not_suitable";
        QTest::newRow("26 AWG with taps, 9 kft together")
            << makeup({section(26, 7000), tap(26, 2000)}) << "";
        QTest::newRow("26 AWG with taps, more")
            << makeup({section(26, 7001), tap(26, 2000)}) << "csa_length:not_suitable";
        QTest::newRow("24 AWG, 12 kft with taps")
            << makeup({section(24, 10000), tap(26, 2000)}) << "";
        QTest::newRow("24 AWG, more") << makeup({section(24, 12001)}) << "csa_length:not_suitable";
        QTest::newRow("19 AWG as 24") << makeup({section(19, 12000)}) << "";
        // 12 - 3 * 3 / (9 - 0) = 11 kft; with a tap of 1 kft 12 - 3 * 4 / 8 = 10.5 kft.
        QTest::newRow("mixed, 11 kft") << makeup({section(26, 3000), section(24, 8000)}) << "";
        QTest::newRow("mixed, more")
            << makeup({section(26, 3000), section(24, 8001)}) << "csa_length:not_suitable";
        QTest::newRow("mixed with tap, 10.5 kft")
            << makeup({section(26, 4000), tap(24, 1000), section(24, 5500)}) << "";
        QTest::newRow("mixed with tap, more")
            << makeup({section(26, 4000), tap(24, 1000), section(24, 5501)})
            << "csa_length:not_suitable";
        QTest::newRow("one tap too long")
            << makeup({section(24, 1000), tap(24, 2001)}) << "csa_tap_single:not_suitable";
        QTest::newRow("taps too long together")
            << makeup({section(24, 1000), tap(24, 1300), tap(24, 1201)})
            << "csa_tap_total:not_suitable";
        QTest::newRow("two changes of gauge, stubs apart")
            << makeup({section(26, 100), tap(19, 100), section(24, 100), section(22, 100)}) << "";
        QTest::newRow("three changes")
            << makeup({section(26, 100), section(24, 100), section(22, 100), section(24, 100)})
            << "csa_gauge_changes:not_suitable";
        QTest::newRow("coil") << makeup({section(26, 100), coil()})
                              << "csa_load_coils:not_suitable";
        QTest::newRow("0.40 mm as 26 AWG")
            << makeup({metric(0.40, 2744)}) << "csa_length:not_suitable";
        QTest::newRow("0.50 mm as 24 AWG") << makeup({metric(0.50, 3657)}) << "";
        QTest::newRow("finer than 26 AWG")
            << makeup({metric(0.32, 500)}) << "csa_finest_wire:marginal";
        QTest::newRow("taps as long as the whole area")
            << makeup({section(26, 100), tap(24, 9000)})
            << "csa_length:not_suitable csa_tap_total:not_suitable csa_tap_single:not_suitable";
    }
    void servingArea()
    {
        QFETCH(LoopMakeup, loop);
        QFETCH(QString, expected);
        QCOMPARE(notMet(carrierServingArea(loop, m_limits)), expected);
    }

    void theEndSectionHoldsItsTaps()
    {
        QCOMPARE(endSectionFt(makeup({section(22, 3000), coil(), section(22, 4000), tap(24, 500)})),
                 4500.0);
        QCOMPARE(endSectionFt(makeup({section(22, 3000)})), 3000.0);
        QCOMPARE(endSectionFt(makeup({section(22, 3000), coil()})), 0.0);
    }
    void everyRuleHasASource()
    {
        const LoopMakeup loop = makeup({section(22, 9000), coil(), section(26, 11000)});
        for (const RuleSet &set :
             {resistanceDesign(loop, m_limits), revisedResistanceDesign(loop, m_limits),
              carrierServingArea(loop, m_limits)})
            for (const RuleResult &rule : set.rules)
                QVERIFY2(!rule.source.isEmpty() && !rule.reason.isEmpty(), qPrintable(rule.key));
    }
};

QTEST_APPLESS_MAIN(PlantDesignTest)
#include "PlantDesignTest.moc"
