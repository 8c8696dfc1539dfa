#include "core/loop/Remedies.h"

#include "tests/support/Jobs.h"
#include "tests/support/LoopGenerators.h"
#include "tests/support/Loops.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::loops;

class RemediesTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    void nothingToMend()
    {
        QVERIFY(remedies(makeup({section(26, 9000), tap(24, 500)}), m_limits).empty());
        QVERIFY(remedies(makeup({section(26, 17000)}), m_limits).empty());
    }
    void takesOutTheOneCoil()
    {
        const auto found = remedies(
            makeup({section(22, 3000), coil(), section(22, 6000), tap(22, 800)}), m_limits);
        QVERIFY(!found.empty());
        QCOMPARE(found[0].remove, std::vector<std::size_t>{1});
        QCOMPARE(found[0].verdictAfter, Suitability::Suitable);
        QCOMPARE(found[0].text.english(),
                 QString("Take out the load coil of 88 mH, at 3000 ft from the office"));
        const double after =
            insertionLossDb(makeup({section(22, 3000), section(22, 6000), tap(22, 800)}), 40000);
        QCOMPARE(found[0].lossAfterDb, after);
        // The tap alone is listed too, and that it does not help.
        QCOMPARE(found.size(), std::size_t(2));
        QCOMPARE(found[1].remove, std::vector<std::size_t>{3});
        QCOMPARE(found[1].verdictAfter, Suitability::NotSuitable);
    }
    void takesOutAllCoilsTogether()
    {
        const auto found = remedies(makeup({section(22, 3000), coil(), section(22, 6000), coil(),
                                            section(22, 6000), coil(), section(22, 3000)}),
                                    m_limits);
        QVERIFY(!found.empty());
        QCOMPARE(found[0].remove, (std::vector<std::size_t>{1, 3, 5}));
        QCOMPARE(found[0].verdictAfter, Suitability::Suitable);
        QCOMPARE(found.size(), std::size_t(4));
    }
    // Near a quarter wave (3 kft at 40 kHz) a tap does more harm than one that is much longer.
    void takesOutTheTapThatHurtsNotTheLongest()
    {
        const LoopMakeup loop = makeup(
            {section(24, 9000), tap(24, 3000), section(24, 100), tap(24, 5000), section(24, 9000)});
        const auto found = remedies(loop, m_limits);
        QVERIFY(found.size() >= 2);
        std::vector<Remedy> singles;
        for (const Remedy &mend : found)
            if (mend.remove.size() == 1)
                singles.push_back(mend);
        QCOMPARE(singles.size(), std::size_t(2));
        QCOMPARE(singles[0].remove, std::vector<std::size_t>{1});
        QVERIFY(singles[0].lossAfterDb < singles[1].lossAfterDb);
        QVERIFY(singles[0].lossGainDb > 2);
    }
    void tellsTheSmallestSetThatHelps()
    {
        // Either tap alone leaves the loop marginal by its taps; both together mend it.
        const LoopMakeup loop = makeup({section(19, 3000), tap(19, 6500), section(19, 1000),
                                        tap(19, 6400), section(19, 1000)});
        QCOMPARE(qualify(loop, m_limits).verdict, Suitability::Marginal);
        const auto found = remedies(loop, m_limits);
        QCOMPARE(found[0].remove, (std::vector<std::size_t>{1, 3}));
        QCOMPARE(found[0].verdictAfter, Suitability::Suitable);
        QCOMPARE(found.size(), std::size_t(3));
        QCOMPARE(found[0].toJson()["verdict_after"].toString(), QString("suitable"));
    }
    void copesWithManyTaps()
    {
        std::vector<LoopElement> elements;
        for (int i = 0; i < 12; ++i) {
            elements.push_back(section(24, 500));
            elements.push_back(tap(24, 900));
        }
        const auto found = remedies(makeup(elements), m_limits);
        QVERIFY(!found.empty());
        QCOMPARE(found[0].verdictAfter, Suitability::Suitable);
        QVERIFY(found.size() >= 12);
    }
    void everyMendIsWhatQualifySays()
    {
        QVERIFY(rc::check([this] {
            const LoopMakeup loop = *anyMakeup();
            RC_PRE(loop.elements.size() < 12U);
            for (const Remedy &mend : remedies(loop, m_limits)) {
                const auto after = qualify(loop.without(mend.remove), m_limits);
                RC_ASSERT(after.verdict == mend.verdictAfter);
                RC_ASSERT(after.insertionLossDb == mend.lossAfterDb);
                for (const std::size_t position : mend.remove)
                    RC_ASSERT(loop.elements[position].type != ElementType::Section);
            }
        }));
    }
};

QTEST_APPLESS_MAIN(RemediesTest)
#include "RemediesTest.moc"
