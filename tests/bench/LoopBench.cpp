// Loops per second for the loss at 40 kHz: reads the arrays that tests/bench/loop.py made, works
// them through on one thread and on two, writes the losses back and prints the times.

#include "core/loop/LoopBatch.h"

#include <QFile>
#include <QtEndian>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <functional>
#include <limits>
#include <thread>

using namespace loopwright;

namespace {

constexpr double frequencyHz = 40000;

struct Times
{
    double wall = std::numeric_limits<double>::max();      ///< seconds, the best of all rounds
    double processor = std::numeric_limits<double>::max(); ///< of all threads together
};

template<class T>
std::vector<T> take(QFile &file, std::size_t count)
{
    std::vector<T> values(count);
    file.read(reinterpret_cast<char *>(values.data()), qint64(count * sizeof(T)));
    return values;
}

/// Header: number of loops and of places per loop (int32); then per place kind (0 none, 1 section,
/// 2 tap, 3 coil) and wire number (int8), length in km and inductance in mH (float64); then
/// temperature in °F per loop (float64).
LoopBatch readLoops(QFile &file)
{
    const auto sizes = take<qint32>(file, 2);
    const std::size_t loops = std::size_t(sizes[0]);
    const std::size_t places = std::size_t(sizes[1]);
    const auto kinds = take<qint8>(file, loops * places);
    const auto wires = take<qint8>(file, loops * places);
    const auto kilometres = take<double>(file, loops * places);
    const auto millihenry = take<double>(file, loops * places);
    const auto fahrenheit = take<double>(file, loops);
    LoopBatch batch;
    batch.reserve(loops, loops * places);
    for (std::size_t i = 0; i < loops; ++i) {
        LoopMakeup makeup;
        makeup.temperature = Temperature{fahrenheit[i], false};
        for (std::size_t j = i * places; j < (i + 1) * places && kinds[j] != 0; ++j) {
            const std::size_t number = std::size_t(wires[j]);
            const Wire wire =
                number < knownGauges().size()
                    ? Wire::awg(knownGauges()[number])
                    : Wire::millimetres(knownDiameters()[number - knownGauges().size()]);
            const Length length{1000 * kilometres[j], LengthUnit::Metre};
            makeup.elements.push_back(kinds[j] == 1   ? LoopElement::section(wire, length)
                                      : kinds[j] == 2 ? LoopElement::tap(wire, length)
                                                      : LoopElement::coil(millihenry[j]));
        }
        batch.add(makeup);
    }
    return batch;
}

Times bestOf(int rounds, const std::function<void()> &work)
{
    Times best;
    for (int i = 0; i < rounds; ++i) {
        const std::clock_t before = std::clock();
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double> wall = std::chrono::steady_clock::now() - start;
        best.wall = std::min(best.wall, wall.count());
        best.processor =
            std::min(best.processor, double(std::clock() - before) / double(CLOCKS_PER_SEC));
    }
    return best;
}

} // namespace

int main(int count, char **words)
{
    if (count != 4) {
        std::fprintf(stderr, "usage: bench.loop ARRAYS LOSSES ROUNDS\n");
        return 2;
    }
    QFile arrays(QString::fromLocal8Bit(words[1]));
    QFile results(QString::fromLocal8Bit(words[2]));
    if (!arrays.open(QIODevice::ReadOnly) || !results.open(QIODevice::WriteOnly)) {
        std::fprintf(stderr, "bench.loop: cannot open its files\n");
        return 3;
    }
    const int rounds = QByteArray(words[3]).toInt();
    const LoopBatch batch = readLoops(arrays);
    std::vector<double> losses(batch.size());
    const std::span<double> into(losses);
    const std::size_t half = batch.size() / 2;

    const Times one = bestOf(rounds, [&] { batch.lossesDb(frequencyHz, {}, 0, into); });
    const std::vector<double> alone = losses;
    const Times two = bestOf(rounds, [&] {
        std::jthread other([&] { batch.lossesDb(frequencyHz, {}, 0, into.first(half)); });
        batch.lossesDb(frequencyHz, {}, half, into.subspan(half));
    });
    for (std::size_t i = 0; i < losses.size(); ++i) // by where a block ends, the last digit differs
        if (!(std::abs(alone[i] - losses[i]) < 1e-9))
            return 1;
    results.write(reinterpret_cast<const char *>(losses.data()),
                  qint64(losses.size() * sizeof(double)));
    std::printf("{\"one_wall\":%.9g,\"one_processor\":%.9g,\"two_wall\":%.9g,"
                "\"two_processor\":%.9g}\n",
                one.wall, one.processor, two.wall, two.processor);
    return 0;
}
