#include "core/loop/VoiceBand.h"

#include "tests/support/Jobs.h"
#include "tests/support/Loops.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::loops;

Q_DECLARE_METATYPE(LoopMakeup)

class VoiceBandTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    void qualifies_data()
    {
        QTest::addColumn<LoopMakeup>("loop");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("notMet");
        const auto row = [](const char *name, std::vector<LoopElement> elements,
                            const char *verdict, const char *notMet) {
            QTest::newRow(name) << makeup(std::move(elements)) << QString::fromLatin1(verdict)
                                << QString::fromLatin1(notMet);
        };
        row("short", {section(26, 9000)}, "suitable", "");
        row("over 1300 ohm", {section(26, 15600)}, "not_suitable", "voice_resistance");
        row("long without coils", {section(22, 21000)}, "not_suitable", "voice_load_coils");
        row("22H88", // of the check values, L18
            {section(22, 3000), coil(), section(22, 6000), coil(), section(22, 6000), coil(),
             section(22, 6000)},
            "suitable", "");
        row("24D66",
            {section(24, 2250), coil(66), section(24, 4500), coil(66), section(24, 4500), coil(66),
             section(24, 4500), coil(66), section(24, 4000)},
            "suitable", "");
        row("1400 ohm when hot, loaded",
            {section(24, 3000), coil(), section(24, 6000), coil(), section(24, 6000), coil(),
             section(24, 6000)},
            "suitable", "");
        row("within 2 % of its spacing",
            {section(22, 3120), coil(), section(22, 6120), coil(), section(22, 9000)}, "suitable",
            "");
        row("first coil beyond 2 %",
            {section(22, 3121), coil(), section(22, 6000), coil(), section(22, 9000)}, "marginal",
            "voice_office_end_section");
        row("coils beyond 2 %",
            {section(22, 3000), coil(), section(22, 6121), coil(), section(22, 9000)}, "marginal",
            "voice_coil_spacing");
        row("coil on a short loop", {section(22, 3000), coil(), section(22, 6000)}, "marginal",
            "voice_load_coils");
        row("coil at the wrong place",
            {section(22, 3000), coil(), section(22, 5500), coil(), section(22, 6500), coil(),
             section(22, 6000)},
            "marginal", "voice_coil_spacing");
        row("tap between coils",
            {section(22, 3000), coil(), section(22, 3000), tap(24, 500), section(22, 3000), coil(),
             section(22, 9500)},
            "marginal", "voice_tap_between_coils");
        row("end section too short",
            {section(22, 3000), coil(), section(22, 6000), coil(), section(22, 6000), coil(),
             section(22, 6000), coil(), section(22, 2900)},
            "marginal", "voice_end_section_min");
        row("end section too long",
            {section(22, 3000), coil(), section(22, 6000), coil(), section(22, 12500)}, "marginal",
            "voice_end_section_max");
        row("taps", {section(22, 9000), tap(22, 6500)}, "marginal", "voice_tap_total");
    }
    void qualifies()
    {
        QFETCH(LoopMakeup, loop);
        QFETCH(QString, verdict);
        QFETCH(QString, notMet);
        const VoiceBandQualification found = qualifyVoiceBand(loop, m_limits);
        QStringList keys;
        for (const RuleResult &rule : found.rules) {
            QVERIFY(!rule.source.isEmpty() && !rule.reason.isEmpty());
            if (rule.verdict != Suitability::Suitable)
                keys << rule.key;
        }
        QCOMPARE(keys.join(' '), notMet);
        QCOMPARE(toText(found.verdict), verdict);
    }
    void givesItsFigures()
    {
        const LoopMakeup loaded = makeup({section(22, 3000), coil(), section(22, 6000), coil(),
                                          section(22, 6000), coil(), section(22, 3000)});
        const QJsonObject json = qualifyVoiceBand(loaded, m_limits).toJson();
        // Check value L18 (computed with NumPy and mpmath).
        QVERIFY(std::abs(json["loss_1004_db"].toDouble() - 2.8201) <= 1e-4);
        QVERIFY(std::abs(json["dc_resistance_ohm"].toDouble() - 621.108) <= 1e-3);
        QCOMPARE(json["load_coils"].toInt(), 3);
        // Bare, the same pair has a slope of 6.8 dB from 404 to 2804 Hz, loaded 0.8 dB (computed
        // with NumPy, one decimal).
        const auto loss = [](const LoopMakeup &loop, double frequency) {
            return insertionLossDb(loop, frequency, voiceBandTerminations);
        };
        const LoopMakeup bare = makeup({section(22, 18000)});
        QVERIFY(std::abs(loss(bare, 2804) - loss(bare, 404) - 6.8) < 0.051);
        QVERIFY(std::abs(loss(loaded, 2804) - loss(loaded, 404) - 0.8) < 0.051);
    }
};

QTEST_APPLESS_MAIN(VoiceBandTest)
#include "VoiceBandTest.moc"
