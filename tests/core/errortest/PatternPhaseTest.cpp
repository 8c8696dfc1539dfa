#include "core/errortest/PatternPhase.h"

#include <QTest>

#include <random>

using namespace loopwright;

Q_DECLARE_METATYPE(loopwright::PatternKey)

namespace {

Pattern plain(PatternKey key)
{
    Pattern pattern = patternOf(key);
    pattern.inverted = pattern.zeroSuppressed = false;
    return pattern;
}

/// A whole period and some more of plain bits from n ones on, out of the register.
std::vector<bool> plainBits(PatternKey key)
{
    const Pattern pattern = plain(key);
    PatternRegister source(pattern, pattern.period());
    std::vector<bool> bits(pattern.period() + 4096);
    for (std::size_t i = 0; i < bits.size(); ++i)
        bits[i] = source.next();
    return bits;
}

} // namespace

class PatternPhaseTest : public QObject
{
    Q_OBJECT
private:
    void eachPattern()
    {
        QTest::addColumn<PatternKey>("key");
        for (const Pattern &pattern : patterns())
            QTest::newRow(pattern.name) << pattern.key;
    }
private slots:
    void phasesAndBitsAreInverse_data() { eachPattern(); }
    void phasesAndBitsAreInverse()
    {
        QFETCH(PatternKey, key);
        const PatternPhase phase(patternOf(key));
        const auto bits = plainBits(key);
        const int n = phase.pattern().stages;
        std::mt19937 random(7);
        const quint32 tries = phase.period() < 3000 ? phase.period() : 3000;
        for (quint32 i = 0; i < tries; ++i) {
            const quint32 at = tries == phase.period() ? i : random() % phase.period();
            quint32 expected = 0;
            for (int bit = 0; bit < n; ++bit)
                expected = (expected << 1) | quint32(bits[at + std::size_t(bit)]);
            QCOMPARE(phase.bitsAt(at), expected);
            QCOMPARE(phase.phaseOf(expected), at);
        }
    }

    void fillsWords_data() { eachPattern(); }
    void fillsWords()
    {
        QFETCH(PatternKey, key);
        const PatternPhase phase(patternOf(key));
        const auto bits = plainBits(key);
        const quint32 starts[] = {0, 1, 77, phase.period() - 1, phase.period() - 300};
        for (const quint32 start : starts) {
            quint64 words[60];
            phase.fill(start, words, 60);
            for (std::size_t i = 0; i < 60 * 64; ++i)
                QCOMPARE(bool((words[i / 64] >> (63 - i % 64)) & 1),
                         bool(bits[(start + i) % phase.period()]));
        }
    }

    void knowsWhereZerosAreSuppressed()
    {
        const PatternPhase phase(patternOf(PatternKey::Qrss20));
        const auto bits = plainBits(PatternKey::Qrss20);
        std::vector<quint32> expected;
        for (quint32 at = 0; at < phase.period(); ++at) {
            bool zeros = true;
            for (quint32 i = 0; i < 15 && zeros; ++i)
                zeros = !bits[at + i];
            if (zeros)
                expected.push_back(at);
        }
        QCOMPARE(phase.suppressed(), expected);
        // Reference c.1: 524319 ones in place of 2^19.
        QCOMPARE(expected.size(), std::size_t(524319 - (1 << 19)));
        QVERIFY(PatternPhase(patternOf(PatternKey::Prbs20)).suppressed().empty());
    }
};

QTEST_APPLESS_MAIN(PatternPhaseTest)
#include "PatternPhaseTest.moc"
