#include "core/loop/Wire.h"

#include <QTest>

using namespace loopwright;

class WireTest : public QObject
{
    Q_OBJECT

private slots:
    void knowsItsWires()
    {
        for (const int gauge : knownGauges())
            QVERIFY(isKnown(Wire::awg(gauge)));
        for (const double diameter : knownDiameters())
            QVERIFY(isKnown(Wire::millimetres(diameter)));
        QVERIFY(!isKnown(Wire::awg(28)));
        QVERIFY(!isKnown(Wire::millimetres(0.6)));
        QVERIFY(!isKnown(Wire{}));
    }

    void numbersGaugesFirst()
    {
        int number = 0;
        for (const int gauge : knownGauges())
            QCOMPARE(wireNumber(Wire::awg(gauge)), number++);
        for (const double diameter : knownDiameters())
            QCOMPARE(wireNumber(Wire::millimetres(diameter)), number++);
        QCOMPARE(number, wireCount);
    }
};

QTEST_APPLESS_MAIN(WireTest)
#include "WireTest.moc"
