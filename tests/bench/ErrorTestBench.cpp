// Speed of the error test's core, as ratios to plain loops in the same run. Every baseline stands
// here in full and is built with the flags of the program. Prints one line per figure; an argument
// limits it to the group of that name: capture seven long bits nothing runs.

#include "core/errortest/Capture.h"
#include "tests/support/BitwiseCapture.h"

#include <cstdio>
#include <cstring>
#include <functional>
#include <numeric>
#include <random>
#include <time.h>

using namespace loopwright;

namespace {

constexpr int rounds = 25;
constexpr qint64 quarterOfAnHour = 7'200'000; ///< octets at 64 kbit/s
constexpr qint64 long256 = 256'000'000;

qint64 g_sink = 0; // keeps results alive

/// Milliseconds of processor time of this program.
double processorMs()
{
    timespec now;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return double(now.tv_sec) * 1e3 + double(now.tv_nsec) / 1e6;
}

/// Milliseconds, the best of several rounds, because what else the machine does only ever adds.
/// Rounds of both take turns.
struct Pair
{
    double measured;
    double baseline;
};
Pair compare(const std::function<void()> &measured, const std::function<void()> &baseline,
             int times = rounds)
{
    std::vector<double> first;
    std::vector<double> second;
    for (int i = 0; i < times; ++i) {
        const double begin = processorMs();
        measured();
        const double middle = processorMs();
        baseline();
        first.push_back(middle - begin);
        second.push_back(processorMs() - middle);
    }
    return {*std::min_element(first.begin(), first.end()),
            *std::min_element(second.begin(), second.end())};
}

void tell(const QString &name, Pair pair, double goal, bool atLeast = false)
{
    const double ratio = atLeast ? pair.baseline / pair.measured : pair.measured / pair.baseline;
    std::printf("%-58s %10.3f ms %10.3f ms  ratio %8.2f  goal %s %g\n", qPrintable(name),
                pair.measured, pair.baseline, ratio, atLeast ? ">=" : "<=", goal);
    std::fflush(stdout);
}

/// Baseline: one pass that counts the ones in memory and does nothing else, as the compiler makes
/// it for a processor without the popcnt instruction.
qint64 popcountPlain(const QByteArray &octets)
{
    qint64 ones = 0;
    for (qsizetype at = 0; at + 8 <= octets.size(); at += 8) {
        quint64 word;
        std::memcpy(&word, octets.constData() + at, sizeof word);
        ones += __builtin_popcountll(word);
    }
    return ones;
}

/// Baseline: the same with the attribute that the analysis has on its innermost function. Aligned,
/// for the loop takes twice as long if it happens to cross a line of the instruction cache.
__attribute__((aligned(64), target_clones("popcnt", "default"))) qint64
popcountFast(const char *octets, qint64 size)
{
    qint64 ones = 0;
    for (qint64 at = 0; at + 8 <= size; at += 8) {
        quint64 word;
        std::memcpy(&word, octets + at, sizeof word);
        ones += __builtin_popcountll(word);
    }
    return ones;
}

/// Baseline: a register that is shifted bit by bit, compared with the capture bit by bit. No search
/// and no synchronisation: less than the analysis does.
qint64 bitByBit(const QByteArray &octets, const Pattern &pattern)
{
    PatternRegister source(pattern, pattern.period());
    qint64 errors = 0;
    qint64 second = 0;
    std::vector<qint64> seconds(std::size_t(octets.size() / 8000 + 1));
    for (qsizetype i = 0; i < octets.size(); ++i) {
        for (int bit = 7; bit >= 0; --bit)
            errors += ((uchar(octets[i]) >> bit) & 1) != source.next();
        if (i % 8000 == 7999)
            seconds[std::size_t(second++)] = std::exchange(errors, 0);
    }
    return std::accumulate(seconds.begin(), seconds.end(), errors);
}

/// Baseline: the plain sum of an array of seconds.
qint64 sumOf(const SecondList &seconds)
{
    qint64 sum = 0;
    for (const Second second : seconds)
        sum += second.code();
    return sum;
}

QByteArray capture(PatternKey key, qint64 octets, double errorRatio, bool seven = false)
{
    PatternRegister source(patternOf(key), patternOf(key).period());
    QByteArray bytes(octets, Qt::Uninitialized);
    for (char &octet : bytes) {
        int value = 0;
        for (int i = 0; i < (seven ? 7 : 8); ++i)
            value = value << 1 | int(source.next());
        octet = char(seven ? value << 1 | 1 : value);
    }
    if (errorRatio > 0) {
        std::mt19937_64 random(1);
        std::geometric_distribution<qint64> gap(errorRatio);
        for (qint64 at = gap(random); at < 8 * octets; at += 1 + gap(random))
            bytes[at / 8] = char(bytes[at / 8] ^ (0x80 >> (at % 8)));
    }
    return bytes;
}

void analyse(const QByteArray &octets, const CaptureOptions &options)
{
    const auto result = analyseCapture(octets, options);
    g_sink += result->summary.bitErrors + qint64(result->seconds.size());
    if (!result->found)
        std::printf("nothing found\n");
}

void captureAgainstPopcount(PatternKey key, qint64 octets, double errorRatio, bool seven = false)
{
    const double goal = patternOf(key).stages <= 15 ? 1.5 : 4;
    const QByteArray bytes = capture(key, octets, errorRatio, seven);
    const QString name = QString("%1, %2 MB, error ratio %3%4")
                             .arg(toText(key))
                             .arg(double(octets) / 1e6)
                             .arg(errorRatio)
                             .arg(QLatin1StringView(seven ? ", 56 kbit/s" : ""));
    const CaptureOptions options{key, seven ? 56000 : 64000, BitOrder::MsbFirst};
    const int times = octets > quarterOfAnHour ? 7 : rounds;
    tell(name + " / popcnt",
         compare([&] { analyse(bytes, options); },
                 [&] { g_sink += popcountFast(bytes.data(), bytes.size()); }, times),
         goal);
    if (octets == quarterOfAnHour) {
        tell(name + " / popcount, baseline",
             compare([&] { analyse(bytes, options); }, [&] { g_sink += popcountPlain(bytes); }),
             goal);
        if (!seven)
            tell(name + " / auto, popcnt",
                 compare([&] { analyse(bytes, {}); },
                         [&] { g_sink += popcountFast(bytes.data(), bytes.size()); }),
                 goal);
    }
}

void captureAgainstBits(PatternKey key)
{
    const QByteArray bytes = capture(key, quarterOfAnHour, 1e-4);
    const CaptureOptions options{key, 64000, BitOrder::MsbFirst};
    tell(QString("%1, 7.2 MB / register bit by bit").arg(toText(key)),
         compare([&] { analyse(bytes, options); },
                 [&] { g_sink += bitByBit(bytes, patternOf(key)); }, 9),
         200, true);
    // Does all that the analysis does, bit by bit, but takes the pattern out of memory. No goal.
    const Pair oracle =
        compare([&] { analyse(bytes, options); },
                [&] { g_sink += bitwise::Analysis(bytes, options).run().summary.bits; }, 9);
    std::printf("%-58s %10.3f ms %10.3f ms  ratio %8.2f\n",
                qPrintable(QString("%1, 7.2 MB / bitwise analysis of the tests").arg(toText(key))),
                oracle.measured, oracle.baseline, oracle.baseline / oracle.measured);
}

void nothingToFind(const char *name, const QByteArray &bytes)
{
    const double begin = processorMs();
    const auto result = analyseCapture(bytes, {});
    const double took = processorMs() - begin;
    g_sink += qint64(result->channel);
    std::printf("%-58s %10.3f ms, %.2f ns an octet\n", name, took,
                took * 1e6 / double(bytes.size()));
}

void runs(double erroredShare, double severeShare)
{
    // A thousand different runs of 900 s, evaluated a thousand times each.
    std::mt19937_64 random(2);
    std::vector<SecondList> all(1000, SecondList(900));
    std::uniform_real_distribution<double> share(0, 1);
    for (SecondList &seconds : all)
        for (Second &second : seconds) {
            const double drawn = share(random);
            second = drawn < severeShare                  ? Second(200)
                     : drawn < severeShare + erroredShare ? Second(1 + qint64(random() % 5))
                                                          : Second(0);
        }
    const auto times = [&](const std::function<void(const SecondList &)> &each) {
        for (int i = 0; i < 1000; ++i)
            for (const SecondList &seconds : all)
                each(seconds);
    };
    const QString name = QString("a million runs, %1 % errored, %2 % severely")
                             .arg(100 * erroredShare)
                             .arg(100 * severeShare);
    const auto evaluate = [&] {
        times([](const SecondList &seconds) {
            G821 evaluator(64000);
            evaluator.push(seconds);
            g_sink += evaluator.counts().availableSeconds;
        });
    };
    const auto sum = [&] { times([](const SecondList &seconds) { g_sink += sumOf(seconds); }); };
    tell(name + " / sum", compare(evaluate, sum, 5), 3);
}

void runsWithRatios()
{
    const SecondList seconds(900, Second(0));
    const double begin = processorMs();
    for (int i = 0; i < 100'000; ++i) {
        SecondList one = seconds;
        one[std::size_t(i % 900)] = i % 7;
        g_sink += qint64(*evaluateSeconds(one, 64000).berUpper95 * 1e12);
    }
    std::printf("%-58s %10.3f us a run\n", "a run with its ratios and the bound",
                (processorMs() - begin) * 1e3 / 100'000);
}

} // namespace

int main(int argc, char **argv)
{
    const QString wanted = argc > 1 ? argv[1] : "";
    const auto asked = [&](const char *name) { return QString(name).contains(wanted); };
    if (asked("capture"))
        for (const double ratio : {0.0, 1e-3})
            for (const Pattern &pattern : patterns())
                captureAgainstPopcount(pattern.key, quarterOfAnHour, ratio);
    if (asked("seven"))
        for (const Pattern &pattern : patterns())
            captureAgainstPopcount(pattern.key, quarterOfAnHour, 0, true);
    if (asked("long"))
        for (const PatternKey key : {PatternKey::Prbs11, PatternKey::Prbs15, PatternKey::Prbs23})
            for (const double ratio : {0.0, 1e-3})
                captureAgainstPopcount(key, long256, ratio);
    if (asked("bits"))
        for (const PatternKey key : {PatternKey::Prbs11, PatternKey::Prbs23})
            captureAgainstBits(key);
    if (asked("nothing")) {
        QByteArray random(16'000'000, Qt::Uninitialized);
        std::mt19937_64 source(3);
        for (char &octet : random)
            octet = char(source());
        nothingToFind("random octets, nothing found", random);
        nothingToFind("a dead channel, nothing found", QByteArray(16'000'000, '\xff'));
    }
    if (asked("runs")) {
        for (const auto &[errored, severe] : {std::pair(0.0, 0.0), std::pair(0.01, 0.0),
                                              std::pair(0.06, 0.001), std::pair(0.2, 0.05)})
            runs(errored, severe);
        runsWithRatios();
    }
    return g_sink == 42 ? 1 : 0;
}
