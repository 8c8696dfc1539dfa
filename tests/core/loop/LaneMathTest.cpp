#include "core/loop/LaneMath.h"

#include <QTest>

#include <cmath>

using namespace loopwright::lanes;

namespace {

bool isNear(double value, double expected, double error = 2e-15)
{
    return std::abs(value - expected) <= error * std::max(1.0, std::abs(expected));
}

} // namespace

class LaneMathTest : public QObject
{
    Q_OBJECT
private slots:
    void exponentialIsThatOfTheLibrary()
    {
        for (double x = -699.9; x < 700; x += 0.0137)
            QVERIFY(std::abs(exponential(x) / std::exp(x) - 1) < 1e-15);
        QCOMPARE(exponential(0), 1.0);
        QCOMPARE(exponential(-1e9), exponential(-700));
    }
    void sineAndCosineAreThoseOfTheLibrary()
    {
        for (double angle = -40; angle < 40; angle += 0.00173) {
            const auto [sine, cosine] = sineCosine(angle);
            QVERIFY(isNear(sine, std::sin(angle)) && isNear(cosine, std::cos(angle)));
        }
        for (double angle = -1e6; angle < 1e6; angle += 97.31) {
            const auto [sine, cosine] = sineCosine(angle);
            QVERIFY(isNear(sine, std::sin(angle)) && isNear(cosine, std::cos(angle)));
        }
    }
    void logarithmIsThatOfTheLibrary()
    {
        for (double x = 1e-307; x < 1e307; x *= 1.0917)
            QVERIFY(isNear(logarithm(x), std::log(x)));
        for (double x = 0.4; x < 2.5; x += 0.000137)
            QVERIFY(isNear(logarithm(x), std::log(x), 1e-16 * 5));
        QCOMPARE(logarithm(1), 0.0);
    }
};

QTEST_APPLESS_MAIN(LaneMathTest)
#include "LaneMathTest.moc"
