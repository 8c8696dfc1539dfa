#include "core/loop/DesignRules.h"

#include "tests/support/Jobs.h"
#include "tests/support/LoopGenerators.h"
#include "tests/support/Loops.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::loops;

namespace {

const RuleResult *find(const std::vector<RuleResult> &rules, const QString &key)
{
    for (const RuleResult &rule : rules)
        if (rule.key == key)
            return &rule;
    return nullptr;
}

/// The hottest that the shipped limit set foresees.
LoopMakeup hot(LoopMakeup loop)
{
    loop.temperature = Temperature{140, false};
    return loop;
}

/// Length of 26 AWG that loses this much at 40 kHz when it is hottest.
double feetFor(double lossDb)
{
    double low = 100;
    double high = 30000;
    for (int i = 0; i < 100; ++i) {
        const double middle = 0.5 * (low + high);
        (insertionLossDb(hot(makeup({section(26, middle)})), 40000) < lossDb ? low : high) = middle;
    }
    return low;
}

} // namespace

Q_DECLARE_METATYPE(LoopMakeup)

class DesignRulesTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    void qualifies_data()
    {
        QTest::addColumn<LoopMakeup>("loop");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QStringList>("notMet");
        const auto row = [](const char *name, std::vector<LoopElement> elements,
                            const char *verdict, const QStringList &notMet) {
            QTest::newRow(name) << makeup(std::move(elements)) << QString::fromLatin1(verdict)
                                << notMet;
        };
        row("short", {section(26, 9000)}, "suitable", {});
        row("coil", {section(22, 3000), coil(), section(22, 3000)}, "not_suitable",
            {"bri_load_coils", "bri_loss"});
        row("a coil too small to be seen in the loss", {section(26, 100), coil(0.01)},
            "not_suitable", {"bri_load_coils"});
        // 96.223 ohm per kft at 140 °F (table of a published line-card practice).
        row("1300 ohm when hot", {section(26, 13500)}, "suitable", {});
        row("over 1300 ohm when hot", {section(26, 13520)}, "not_suitable", {"bri_resistance"});
        row("18 kft exactly", {section(22, 18000)}, "suitable", {});
        row("over 18 kft", {section(22, 18001)}, "marginal", {"bri_length_with_taps"});
        row("over 18 kft by its taps", {section(19, 15000), tap(19, 3001)}, "marginal",
            {"bri_length_with_taps"});
        row("too many taps", {section(19, 2000), tap(26, 3100), tap(26, 3100)}, "marginal",
            {"bri_tap_total"});
    }
    void qualifies()
    {
        QFETCH(LoopMakeup, loop);
        QFETCH(QString, verdict);
        QFETCH(QStringList, notMet);
        const LoopQualification found = qualify(loop, m_limits);
        QStringList keys;
        for (const RuleResult &rule : found.rules)
            if (rule.verdict != Suitability::Suitable)
                keys << rule.key;
        QCOMPARE(keys, notMet);
        QCOMPARE(toText(found.verdict), verdict);
        QCOMPARE(qsizetype(found.reasons.size()), std::max<qsizetype>(1, notMet.size()));
        for (const RuleResult &rule : found.rules)
            QVERIFY(!rule.source.isEmpty() && !rule.reason.isEmpty() && !rule.name.isEmpty());
    }

    // The margin is 3 % of the predicted loss, on both sides of the limit of 42 dB: suitable to
    // 42/1.03 dB, not suitable beyond 42/0.97 dB. Hot, so that 1300 ohm does not come first.
    void theMarginLiesOnBothSides_data()
    {
        QTest::addColumn<double>("loss");
        QTest::addColumn<QString>("verdict");
        QTest::newRow("below") << 42 / 1.03 - 0.001 << "suitable";
        QTest::newRow("just within the error") << 42 / 1.03 + 0.001 << "marginal";
        QTest::newRow("just within the error, above") << 42 / 0.97 - 0.001 << "marginal";
        QTest::newRow("above") << 42 / 0.97 + 0.001 << "not_suitable";
    }
    void theMarginLiesOnBothSides()
    {
        QFETCH(double, loss);
        QFETCH(QString, verdict);
        const auto found = qualify(makeup({section(26, feetFor(loss))}), m_limits);
        const RuleResult *rule = find(found.rules, "bri_loss");
        QVERIFY(rule);
        QCOMPARE(toText(rule->verdict), verdict);
        QVERIFY(std::abs(found.hotLossDb - loss) < 1e-6);
    }
    void theMarginIsAtLeastHalfADecibel()
    {
        QCOMPARE(lossMarginDb(10, m_limits), 0.5);
        QCOMPARE(lossMarginDb(40, m_limits), 0.03 * 40);
    }

    void givesTheFiguresOfTheContract()
    {
        const QJsonObject json =
            qualify(makeup({section(26, 4500), tap(26, 2000), section(26, 4500)}), m_limits)
                .toJson();
        // Check value L12 (computed with NumPy and mpmath).
        QVERIFY(std::abs(json["insertion_loss_db"].toDouble() - 27.9487) <= 1e-4);
        QVERIFY(std::abs(json["dc_resistance_ohm"].toDouble() - 751.275) <= 1e-3);
        QCOMPARE(json["working_length_ft"].toDouble(), 9000.0);
        QCOMPARE(json["bridged_tap_ft"].toDouble(), 2000.0);
        QCOMPARE(json["verdict"].toString(), QString("suitable"));
        QCOMPARE(json["reasons"].toArray(), QJsonArray{"Every rule is met"});
        QCOMPARE(json["designs"].toArray().size(), 3);
        QVERIFY(json["hot_insertion_loss_db"].toDouble() >
                json["insertion_loss_db"].toDouble() + 1);
    }
    void neverGetsBetterWithMoreLoop()
    {
        QVERIFY(rc::check([this] {
            const LoopMakeup loop = *anyMakeup();
            LoopMakeup longer = loop;
            longer.elements.push_back(LoopElement::coil(88));
            RC_ASSERT(qualify(longer, m_limits).verdict == Suitability::NotSuitable);
            RC_ASSERT(qualify(loop, m_limits).verdict <= Suitability::NotSuitable);
        }));
    }
};

QTEST_APPLESS_MAIN(DesignRulesTest)
#include "DesignRulesTest.moc"
