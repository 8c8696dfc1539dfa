#include "core/errortest/SecondBlock.h"

#include <QTest>

#include <random>

using namespace loopwright;

class SecondBlockTest : public QObject
{
    Q_OBJECT
private slots:
    void agreesWithSecondBySecond()
    {
        const Second values[] = {
            0, 0, 0, 0, 0, 1, 2, 63, 64, 65, std::nullopt, 64000, Second::maxBitErrors};
        std::mt19937 random(1);
        for (int i = 0; i < 20'000; ++i) {
            Second seconds[SecondBlock::size];
            const int kinds = 1 + int(random() % std::size(values));
            for (Second &second : seconds)
                second = values[random() % unsigned(kinds)];
            for (const qint32 severeFrom : {1, 64, 128, std::numeric_limits<qint32>::max()})
                QCOMPARE(SecondBlock::of(seconds, severeFrom),
                         SecondBlock::plainly(seconds, severeFrom));
        }
    }

    void tellsPlaces()
    {
        Second seconds[SecondBlock::size];
        seconds[0] = 3;
        seconds[17] = 64;
        seconds[63] = std::nullopt;
        const SecondBlock block = SecondBlock::of(seconds, 64);
        QCOMPARE(block.errored, quint64(1) | quint64(1) << 17 | quint64(1) << 63);
        QCOMPARE(block.severe, quint64(1) << 17 | quint64(1) << 63);
        QCOMPARE(block.lost, quint64(1) << 63);
        QCOMPARE(block.bitErrors, 67);
        QCOMPARE(block.worst, 64);
    }
};

QTEST_APPLESS_MAIN(SecondBlockTest)
#include "SecondBlockTest.moc"
