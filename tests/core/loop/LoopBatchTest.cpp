#include "core/loop/LoopBatch.h"

#include "tests/support/LoopGenerators.h"
#include "tests/support/Loops.h"

#include <QTest>

#include <cmath>
#include <thread>

using namespace loopwright;
using namespace loopwright::loops;

namespace {

bool agrees(double batch, double single)
{
    return std::abs(batch - single) < 1e-9 * std::max(1.0, std::abs(single));
}

/// Loops of one to seven elements, in every wire, without chance.
std::vector<LoopMakeup> manyLoops(int count)
{
    std::vector<LoopMakeup> makeups;
    for (int i = 0; i < count; ++i) {
        LoopMakeup made;
        made.temperature = Temperature{double(i * 7 % 140), false};
        for (int j = 0; j <= i % 7; ++j) {
            const int number = (i * 5 + j * 3) % wireCount;
            const Wire wire = number < 4
                                  ? Wire::awg(knownGauges()[std::size_t(number)])
                                  : Wire::millimetres(knownDiameters()[std::size_t(number - 4)]);
            const Length length{50.0 + i * 37 % 1500, LengthUnit::Metre};
            made.elements.push_back(j % 3 == 1 ? LoopElement::tap(wire, length)
                                               : LoopElement::section(wire, length));
            if (i % 11 == 0)
                made.elements.push_back(coil());
        }
        makeups.push_back(made);
    }
    return makeups;
}

} // namespace

class LoopBatchTest : public QObject
{
    Q_OBJECT
private slots:
    void isAsOneByOne()
    {
        QVERIFY(rc::check([] {
            const auto makeups = *rc::gen::container<std::vector<LoopMakeup>>(anyMakeup());
            const double frequency = *anyFrequency();
            const Terminations between{*anyOhms(), *anyOhms()};
            LoopBatch batch;
            for (const LoopMakeup &each : makeups)
                batch.add(each);
            std::vector<double> losses(makeups.size());
            batch.lossesDb(frequency, between, 0, losses);
            for (std::size_t i = 0; i < makeups.size(); ++i)
                RC_ASSERT(agrees(losses[i], insertionLossDb(makeups[i], frequency, between)));
        }));
    }
    // More elements than a block holds, so that loops lie across its end; any part alone.
    void anyPartIsAsTheWhole()
    {
        const auto makeups = manyLoops(3000);
        LoopBatch batch;
        batch.reserve(makeups.size(), 0);
        for (const LoopMakeup &each : makeups)
            batch.add(each);
        QCOMPARE(batch.size(), makeups.size());
        std::vector<double> losses(makeups.size());
        batch.lossesDb(40000, {}, 0, losses);
        for (std::size_t i = 0; i < makeups.size(); ++i)
            QVERIFY(agrees(losses[i], insertionLossDb(makeups[i], 40000)));
        for (const std::size_t first : {std::size_t(1), std::size_t(517), makeups.size() - 1}) {
            std::vector<double> part(makeups.size() - first);
            batch.lossesDb(40000, {}, first, part);
            for (std::size_t i = 0; i < part.size(); ++i)
                QVERIFY(agrees(part[i], losses[first + i]));
        }
        batch.lossesDb(40000, {}, 5, {});
    }
    void threadsShareIt()
    {
        const auto makeups = manyLoops(2000);
        LoopBatch batch;
        for (const LoopMakeup &each : makeups)
            batch.add(each);
        std::vector<double> losses(makeups.size());
        const std::span<double> into(losses);
        {
            std::jthread other([&] { batch.lossesDb(40000, {}, 0, into.first(900)); });
            batch.lossesDb(40000, {}, 900, into.subspan(900));
        }
        for (std::size_t i = 0; i < makeups.size(); ++i)
            QVERIFY(agrees(losses[i], insertionLossDb(makeups[i], 40000)));
    }
    void staysFiniteOnLoopsWithoutEnd()
    {
        LoopMakeup longest;
        for (int i = 0; i < 400; ++i) {
            longest.elements.push_back(section(26, 300000));
            longest.elements.push_back(coil(1000));
            longest.elements.push_back(tap(19, 790));
        }
        LoopMakeup coils;
        coils.elements.assign(700, LoopElement::coil(1000, 0));
        LoopBatch batch;
        batch.add(longest);
        batch.add(LoopMakeup()); // no element at all
        batch.add(coils);
        batch.add(makeup({section(26, 9000)}));
        std::vector<double> losses(4);
        batch.lossesDb(1e6, {}, 0, losses);
        QVERIFY(agrees(losses[0], insertionLossDb(longest, 1e6)) && losses[0] > 1e5);
        QVERIFY(std::abs(losses[1]) < 1e-9);
        QVERIFY(agrees(losses[2], insertionLossDb(coils, 1e6)));
        QVERIFY(agrees(losses[3], insertionLossDb(makeup({section(26, 9000)}), 1e6)));
    }
    // Columns of a fixed number of places, with places left empty between and after the others.
    void emptyPlacesChangeNothing()
    {
        using enum BatchKind;
        const std::vector<BatchKind> kinds{Section, Tap,     Coil,    Section, Nothing, Nothing, //
                                           Nothing, Section, Nothing, Coil,    Nothing, Nothing, //
                                           Nothing, Nothing, Nothing, Nothing, Nothing, Nothing, //
                                           Nothing, Tap,     Nothing, Section, Section, Section};
        std::vector<std::int32_t> cables(kinds.size());
        std::vector<double> kilometres(kinds.size());
        for (std::size_t i = 0; i < kinds.size(); ++i) {
            cables[i] = std::int32_t(i % wireCount);
            kilometres[i] = 0.3 + 0.1 * double(i);
        }
        const std::vector<double> millihenry(kinds.size(), 88), fahrenheit{-40, 70, 100, 140};
        const LoopColumns columns{{}, 6, kinds, cables, kilometres, millihenry, {}, fahrenheit};
        std::vector<double> losses(fahrenheit.size());
        lossesDb(columns, knownCables(), 40000, {900, 600}, 0, losses);
        for (std::size_t loop = 0; loop < losses.size(); ++loop) {
            LoopMakeup same;
            same.temperature = Temperature{fahrenheit[loop], false};
            for (std::size_t i = 6 * loop; i < 6 * (loop + 1); ++i) {
                const Wire wire = knownCables()[i % wireCount].wire;
                const Length length{1000 * kilometres[i], LengthUnit::Metre};
                if (kinds[i] == Section)
                    same.elements.push_back(LoopElement::section(wire, length));
                else if (kinds[i] == Tap)
                    same.elements.push_back(LoopElement::tap(wire, length));
                else if (kinds[i] == Coil)
                    same.elements.push_back(LoopElement::coil(88));
            }
            QVERIFY(agrees(losses[loop], insertionLossDb(same, 40000, {900, 600})));
        }
    }
    // Loops of every length up to far more elements than are put in order, in one group of lanes.
    void loopsOfAnyLengthGoTogether()
    {
        std::vector<LoopMakeup> makeups;
        LoopBatch batch;
        for (int i = 0; i < 120; ++i) {
            LoopMakeup made;
            for (int j = 0; j < i * 7 % 97; ++j)
                made.elements.push_back(j % 5 == 1 ? tap(22, 100 + i) : section(24, 300 + 10 * j));
            makeups.push_back(made);
            batch.add(made);
        }
        std::vector<double> losses(makeups.size());
        batch.lossesDb(40000, {}, 0, losses);
        for (std::size_t i = 0; i < makeups.size(); ++i)
            QVERIFY(agrees(losses[i], insertionLossDb(makeups[i], 40000)));
    }
    void anEmptyBatchHasNothing()
    {
        const LoopBatch batch;
        batch.lossesDb(40000, {}, 0, {});
        QCOMPARE(batch.size(), std::size_t(0));
    }
};

QTEST_APPLESS_MAIN(LoopBatchTest)
#include "LoopBatchTest.moc"
