#include "core/loop/LoopKernel.h"

#include "core/loop/LaneMath.h"
#include "core/loop/LineConstants.h"

#include <cmath>
#include <numbers>

// core/CMakeLists.txt keeps errno and traps of arithmetic, which stand in the way of vectors, out
// of this file.

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) &&                             \
    !defined(__SANITIZE_ADDRESS__)
// Vector registers of 512 and of 256 bits if the processor has them.
#define LOOPWRIGHT_EACH_WIDTH                                                                      \
    __attribute__((target_clones("arch=x86-64-v4", "arch=x86-64-v3", "default")))
#else
#define LOOPWRIGHT_EACH_WIDTH
#endif

// No lane of a loop depends on another one.
#if defined(__clang__)
#define LOOPWRIGHT_LANES_APART _Pragma("clang loop vectorize(assume_safety)")
#elif defined(__GNUC__)
#define LOOPWRIGHT_LANES_APART _Pragma("GCC ivdep")
#else
#define LOOPWRIGHT_LANES_APART
#endif

namespace loopwright::kernel {

namespace {

constexpr double largestPower = 1e100;

inline double power(double real, double imaginary)
{
    return real * real + imaginary * imaginary;
}

/// Propagation of the cable of each lane. The same steps as propagation() for one without leakage.
struct alignas(64) Propagations
{
    double alpha[laneCount]; ///< neper per km
    double beta[laneCount];  ///< radian per km
    double perM[laneCount];  ///< y0 = (beta + j alpha) / m
    double perWc[laneCount]; ///< z0 = (beta - j alpha) / wc
};

} // namespace

LOOPWRIGHT_EACH_WIDTH
void start(const Lanes<double> &fahrenheit, std::size_t count, const Ohms &between, Waves &waves)
{
    for (std::size_t i = 0; i < count; ++i) {
        waves.warmth[i] = temperatureFactor(fahrenheit[i]);
        waves.logWarmth[i] = lanes::logarithm(waves.warmth[i]);
        waves.voltageReal[i] = between.load;
        waves.voltageImaginary[i] = 0;
        waves.currentReal[i] = 1;
        waves.currentImaginary[i] = 0;
        waves.log[i] = 0;
    }
}

namespace {

LOOPWRIGHT_EACH_WIDTH
void propagate(const Cables &cables, const Lanes<std::int32_t> &cable, std::size_t count,
               const Waves &waves, Propagations &out)
{
    const Cables of = cables;
    LOOPWRIGHT_LANES_APART
    for (std::size_t i = 0; i < count; ++i) {
        const std::int32_t at = cable[i];
        const double k2 = waves.warmth[i] * waves.warmth[i];
        const double r2 = of.r2[at] * k2;
        const double resistance2 = std::sqrt(r2 * r2 + of.af2[at] * k2);
        const double x = of.x[at] * lanes::exponential(-of.b[at] * waves.logWarmth[i]);
        const double wl = (of.wl0[at] + of.wlInf[at] * x) / (1 + x);
        const double m = std::sqrt(resistance2 + wl * wl);
        const double halfWc = of.halfWc[at];
        const double beta = std::sqrt(halfWc * (m + wl));
        const double perAll = 1 / (m * beta * halfWc); // one division for three
        out.alpha[i] = halfWc * std::sqrt(resistance2) * (m * halfWc * perAll);
        out.beta[i] = beta;
        out.perM[i] = beta * halfWc * perAll;
        out.perWc[i] = 0.5 * m * beta * perAll;
    }
}

/// Voltage and current that have grown large are made small, and the growth kept in the logarithm.
LOOPWRIGHT_EACH_WIDTH
void scaleDown(std::size_t count, Waves &waves)
{
    for (std::size_t i = 0; i < count; ++i) {
        const double size = power(waves.voltageReal[i], waves.voltageImaginary[i]) +
                            power(waves.currentReal[i], waves.currentImaginary[i]);
        const double share = 1 / std::sqrt(size);
        waves.voltageReal[i] *= share;
        waves.voltageImaginary[i] *= share;
        waves.currentReal[i] *= share;
        waves.currentImaginary[i] *= share;
        waves.log[i] += 0.5 * lanes::logarithm(size);
    }
}

/// As LoopWave::pass() with the matrix of ChainMatrix, all three types in one formula. Returns
/// whether a wave has grown large. In one piece, because the compiler widens one loop.
LOOPWRIGHT_EACH_WIDTH
bool applyElements(const Propagations &cable, const Elements &elements, double w, std::size_t count,
                   Waves &waves)
{
    std::uint64_t hasGrown = 0;
    LOOPWRIGHT_LANES_APART
    for (std::size_t i = 0; i < count; ++i) {
        const double isSection = elements.type[i] == section ? 1 : 0;
        const double isTap = elements.type[i] == tap ? 1 : 0;
        const double isCoil = elements.type[i] == coil ? 1 : 0;
        const double alpha = cable.alpha[i];
        const double beta = cable.beta[i];
        const double amount = elements.amount[i];
        // What is left of a wave that went to the end of the cable and came back.
        const double size = lanes::exponential(-2 * alpha * amount);
        const auto [unitSine, unitCosine] = lanes::sineCosine(-2 * beta * amount);
        const double sine = size * unitSine;
        const double cosine = size * unitCosine;
        // Of a section sinh, of a tap tanh.
        const double perBelow = isTap / (power(1 + cosine, sine) + (1 - isTap));
        const double waveReal = isSection * 0.5 * (1 - cosine) + (1 - size * size) * perBelow;
        const double waveImaginary = sine * (isSection * -0.5 - 2 * perBelow);
        const double yReal = beta * cable.perM[i];
        const double yImaginary = alpha * cable.perM[i];
        const double zReal = isSection * beta * cable.perWc[i];
        const double zImaginary = -isSection * alpha * cable.perWc[i];
        const double ar = 1 + isSection * 0.5 * (cosine - 1);
        const double ai = isSection * 0.5 * sine;
        const double br = zReal * waveReal - zImaginary * waveImaginary + elements.ohms[i];
        const double bi = zReal * waveImaginary + zImaginary * waveReal + isCoil * w * amount;
        const double cr = yReal * waveReal - yImaginary * waveImaginary;
        const double ci = yReal * waveImaginary + yImaginary * waveReal;

        const double vr = waves.voltageReal[i], vi = waves.voltageImaginary[i];
        const double ir = waves.currentReal[i], ii = waves.currentImaginary[i];
        const double voltageReal = ar * vr - ai * vi + (br * ir - bi * ii);
        const double voltageImaginary = ar * vi + ai * vr + (br * ii + bi * ir);
        const double currentReal = cr * vr - ci * vi + (ar * ir - ai * ii);
        const double currentImaginary = cr * vi + ci * vr + (ar * ii + ai * ir);
        waves.voltageReal[i] = voltageReal;
        waves.voltageImaginary[i] = voltageImaginary;
        waves.currentReal[i] = currentReal;
        waves.currentImaginary[i] = currentImaginary;
        waves.log[i] += isSection * alpha * amount;
        const double wave =
            power(voltageReal, voltageImaginary) + power(currentReal, currentImaginary);
        hasGrown |= std::uint64_t(wave > largestPower ? 1 : 0);
    }
    return hasGrown != 0;
}

} // namespace

void pass(const Cables &cables, const Elements &elements, std::size_t count, Waves &waves)
{
    Propagations propagations;
    propagate(cables, elements.cable, count, waves, propagations);
    if (applyElements(propagations, elements, cables.w, count, waves)) [[unlikely]]
        scaleDown(count, waves);
}

LOOPWRIGHT_EACH_WIDTH
void finish(const Waves &waves, std::size_t count, const Ohms &between, Lanes<double> &lossesDb)
{
    constexpr double decibelOfNeper = 20 / std::numbers::ln10;
    const double ohms = between.source + between.load;
    const double perReference = 1 / (ohms * ohms);
    const double source = between.source;
    LOOPWRIGHT_LANES_APART
    for (std::size_t i = 0; i < count; ++i) {
        const double real = waves.voltageReal[i] + source * waves.currentReal[i];
        const double imaginary = waves.voltageImaginary[i] + source * waves.currentImaginary[i];
        lossesDb[i] =
            decibelOfNeper *
            (0.5 * lanes::logarithm(power(real, imaginary) * perReference) + waves.log[i]);
    }
}

} // namespace loopwright::kernel
