// Loops per second for the loss at 40 kHz: reads the arrays that tests/bench/loop.py made, works
// them through on one thread and on two, writes the losses back and prints the times. All that the
// arrays do not hold is worked out within the time: factors of temperature, constants of the
// cables.

#include "core/loop/LoopBatch.h"

#include <QFile>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <limits>
#include <thread>

using namespace loopwright;

namespace {

constexpr double frequencyHz = 40000;
/// Rounds go on for as long: other work on the machine comes in spells, and one of them must not
/// cover all rounds.
constexpr double leastSeconds = 3;

struct Times
{
    double wall = std::numeric_limits<double>::max();      ///< seconds, the best of all rounds
    double processor = std::numeric_limits<double>::max(); ///< of all threads together
    double busier = std::numeric_limits<double>::max();    ///< processor, of the busier thread
};

template<class T>
std::vector<T> take(QFile &file, std::size_t count)
{
    std::vector<T> values(count);
    file.read(reinterpret_cast<char *>(values.data()), qint64(count * sizeof(T)));
    return values;
}

/// Header: number of loops and of places per loop (int32); then per place kind (BatchKind, int8),
/// wire number (int32), length in km and inductance in mH (float64); then temperature in °F per
/// loop (float64).
struct Arrays
{
    std::vector<qint32> sizes;
    std::vector<BatchKind> kinds;
    std::vector<qint32> wires;
    std::vector<double> kilometres, millihenry, fahrenheit;

    explicit Arrays(QFile &file)
        : sizes(take<qint32>(file, 2))
        , kinds(take<BatchKind>(file, places()))
        , wires(take<qint32>(file, places()))
        , kilometres(take<double>(file, places()))
        , millihenry(take<double>(file, places()))
        , fahrenheit(take<double>(file, loops()))
    {
    }
    std::size_t loops() const { return std::size_t(sizes[0]); }
    std::size_t places() const { return loops() * std::size_t(sizes[1]); }

    void lossesDb(std::size_t first, std::span<double> losses) const
    {
        const LoopColumns columns{
            {}, std::size_t(sizes[1]), kinds, wires, kilometres, millihenry, {}, fahrenheit};
        loopwright::lossesDb(columns, knownCables(), frequencyHz, {}, first, losses);
    }
};

double processorSeconds()
{
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return double(time.tv_sec) + 1e-9 * double(time.tv_nsec);
}

void measureOne(const Arrays &arrays, std::span<double> losses, Times &best)
{
    const double before = processorSeconds();
    const auto start = std::chrono::steady_clock::now();
    arrays.lossesDb(0, losses);
    const std::chrono::duration<double> wall = std::chrono::steady_clock::now() - start;
    const double processor = processorSeconds() - before;
    best = {std::min(best.wall, wall.count()), std::min(best.processor, processor),
            std::min(best.busier, processor)};
}

void measureTwo(const Arrays &arrays, std::span<double> losses, Times &best)
{
    const std::size_t half = losses.size() / 2;
    double other = 0;
    const double before = processorSeconds();
    const auto start = std::chrono::steady_clock::now();
    {
        std::jthread thread([&] {
            arrays.lossesDb(0, losses.first(half));
            other = processorSeconds();
        });
        arrays.lossesDb(half, losses.subspan(half));
    }
    const std::chrono::duration<double> wall = std::chrono::steady_clock::now() - start;
    const double own = processorSeconds() - before;
    best = {std::min(best.wall, wall.count()), std::min(best.processor, own + other),
            std::min(best.busier, std::max(own, other))};
}

} // namespace

int main(int count, char **words)
{
    if (count != 4) {
        std::fprintf(stderr, "usage: bench.loop ARRAYS LOSSES ROUNDS\n");
        return 2;
    }
    QFile file(QString::fromLocal8Bit(words[1]));
    QFile results(QString::fromLocal8Bit(words[2]));
    if (!file.open(QIODevice::ReadOnly) || !results.open(QIODevice::WriteOnly)) {
        std::fprintf(stderr, "bench.loop: cannot open its files\n");
        return 3;
    }
    const int rounds = QByteArray(words[3]).toInt();
    const Arrays arrays(file);
    std::vector<double> alone(arrays.loops());
    std::vector<double> shared(arrays.loops());

    Times one, two;
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < rounds || std::chrono::steady_clock::now() - start <
                                      std::chrono::duration<double>(leastSeconds);
         ++i) { // in turns, so that both see the same machine
        measureOne(arrays, alone, one);
        measureTwo(arrays, shared, two);
    }
    for (std::size_t i = 0; i < alone.size();
         ++i) // by the lane of a loop, the last digit may differ
        if (!(std::abs(alone[i] - shared[i]) < 1e-9))
            return 1;
    results.write(reinterpret_cast<const char *>(shared.data()),
                  qint64(shared.size() * sizeof(double)));
    std::printf("{\"one_wall\":%.9g,\"one_processor\":%.9g,\"two_wall\":%.9g,"
                "\"two_processor\":%.9g,\"two_busier\":%.9g}\n",
                one.wall, one.processor, two.wall, two.processor, two.busier);
    return 0;
}
