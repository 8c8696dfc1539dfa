#include "core/acceptance/FactWords.h"

#include "tests/support/Loops.h"

#include <QTest>

using namespace loopwright;

class FactWordsTest : public QObject
{
    Q_OBJECT

private slots:
    void oneElementIsNoMany()
    {
        const auto told = [](const LoopMakeup &makeup) {
            Fact fact;
            fact.body = LoopFact{{}, {}, {}, makeup};
            return factText(fact, LineKind::Bri);
        };
        QCOMPARE(told(loops::makeup({loops::section(26, 9000)})),
                 "Loop: make-up of 1 element, 9000 ft, taps 0 ft, 0 load coils");
        QCOMPARE(told(loops::makeup(
                     {loops::section(22, 3000), loops::coil(), loops::section(22, 3000)})),
                 "Loop: make-up of 3 elements, 6000 ft, taps 0 ft, 1 load coil");
    }
    void aMakeupInFeetOrMetres()
    {
        Fact fact;
        fact.body = LoopFact{
            {},
            {},
            {},
            loops::makeup({loops::section(26, 9000), loops::tap(24, 1500), loops::coil()})};
        QCOMPARE(factText(fact, LineKind::Bri),
                 "Loop: make-up of 3 elements, 9000 ft, taps 1500 ft, 1 load coil");
        QCOMPARE(factText(fact, LineKind::Bri, true),
                 "Loop: make-up of 3 elements, 2743 m, taps 457 m, 1 load coil");
    }
};

QTEST_APPLESS_MAIN(FactWordsTest)
#include "FactWordsTest.moc"
