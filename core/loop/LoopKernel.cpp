#include "core/loop/LoopKernel.h"

#include <cmath>
#include <numbers>

// This file alone is compiled with -ffast-math (core/CMakeLists.txt), without which the compiler
// does not use the vector functions of the mathematics library. Nothing here depends on the order
// of additions, and no infinity or NaN comes in.

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) &&                             \
    !defined(__SANITIZE_ADDRESS__)
// Vector registers of 512 and of 256 bits where the processor has them.
#define LOOPWRIGHT_EACH_WIDTH                                                                      \
    __attribute__((target_clones("arch=x86-64-v4", "arch=x86-64-v3", "default")))
#else
#define LOOPWRIGHT_EACH_WIDTH
#endif

namespace loopwright::kernel {

namespace {

constexpr double decibelOfNeper = 20 / std::numbers::ln10;

inline void keepInRange(Walk &walk)
{
    const double size =
        walk.voltageReal * walk.voltageReal + walk.voltageImaginary * walk.voltageImaginary +
        walk.currentReal * walk.currentReal + walk.currentImaginary * walk.currentImaginary;
    if (size < 1e100) [[likely]]
        return;
    const double share = 1 / std::sqrt(size);
    walk.voltageReal *= share;
    walk.voltageImaginary *= share;
    walk.currentReal *= share;
    walk.currentImaginary *= share;
    walk.log += 0.5 * std::log(size);
}

} // namespace

LOOPWRIGHT_EACH_WIDTH
void workOut(const Cables &cables, const Elements &elements, std::size_t count, Block &block)
{
    // The same steps as propagation() for a cable without leakage, then those of ChainMatrix. Sine
    // and cosine go apart, as both of one angle in one loop are not made into vectors.
    const Cables from = cables;
    const Elements of = elements;
    Column alpha, beta, perM, size, angle, sine, cosine;
#pragma GCC ivdep
    for (std::size_t i = 0; i < count; ++i) {
        const std::int32_t at = of.cable[i];
        const double k2 = of.warmth[i] * of.warmth[i];
        const double r2 = from.r2[at] * k2;
        const double resistance2 = std::sqrt(r2 * r2 + from.af2[at] * k2);
        const double x = from.x[at] * std::exp(-from.b[at] * of.logWarmth[i]);
        const double wl = (from.wl0[at] + from.wlInf[at] * x) / (1 + x);
        const double m = std::sqrt(resistance2 + wl * wl);
        beta[i] = std::sqrt(from.halfWc[at] * (m + wl));
        const double perBoth = 1 / (m * beta[i]); // one division for two
        alpha[i] = from.halfWc[at] * std::sqrt(resistance2) * m * perBoth;
        perM[i] = beta[i] * perBoth;
        size[i] = std::exp(-2 * alpha[i] * of.amount[i]);
        angle[i] = -2 * beta[i] * of.amount[i];
    }
#pragma GCC ivdep
    for (std::size_t i = 0; i < count; ++i)
        sine[i] = size[i] * std::sin(angle[i]);
#pragma GCC ivdep
    for (std::size_t i = 0; i < count; ++i)
        cosine[i] = size[i] * std::cos(angle[i]);
#pragma GCC ivdep
    for (std::size_t i = 0; i < count; ++i) {
        const double isSection = of.type[i] == section ? 1 : 0;
        const double isCoil = of.type[i] == coil ? 1 : 0;
        const double isCable = 1 - isCoil;
        // Of a section sinh, of a tap tanh.
        const double perBelow = 1 / ((1 + cosine[i]) * (1 + cosine[i]) + sine[i] * sine[i]);
        const double waveReal = isSection * 0.5 * (1 - cosine[i]) +
                                (1 - isSection) * (1 - size[i] * size[i]) * perBelow;
        const double waveImaginary = sine[i] * (isSection * -0.5 + (1 - isSection) * -2 * perBelow);
        const double yReal = isCable * beta[i] * perM[i];
        const double yImaginary = isCable * alpha[i] * perM[i];
        const double perWc = isSection * from.perWc[of.cable[i]];
        const double zReal = beta[i] * perWc;
        const double zImaginary = -alpha[i] * perWc;
        block.aReal[i] = 1 + isSection * 0.5 * (cosine[i] - 1);
        block.aImaginary[i] = isSection * 0.5 * sine[i];
        block.bReal[i] = zReal * waveReal - zImaginary * waveImaginary + of.ohms[i];
        block.bImaginary[i] =
            zReal * waveImaginary + zImaginary * waveReal + isCoil * from.w * of.amount[i];
        block.cReal[i] = yReal * waveReal - yImaginary * waveImaginary;
        block.cImaginary[i] = yReal * waveImaginary + yImaginary * waveReal;
        block.log[i] = isSection * alpha[i] * of.amount[i];
    }
}

LOOPWRIGHT_EACH_WIDTH
std::size_t walk(const Block &block, const std::uint8_t *isLast, std::size_t count,
                 const Ohms &between, Walk &at, double *lossesDb)
{
    Column nepers;
    Walk now = at;
    std::size_t loops = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double vr = now.voltageReal, vi = now.voltageImaginary;
        const double ir = now.currentReal, ii = now.currentImaginary;
        const double ar = block.aReal[i], ai = block.aImaginary[i];
        const double br = block.bReal[i], bi = block.bImaginary[i];
        const double cr = block.cReal[i], ci = block.cImaginary[i];
        now.voltageReal = ar * vr - ai * vi + (br * ir - bi * ii);
        now.voltageImaginary = ar * vi + ai * vr + (br * ii + bi * ir);
        now.currentReal = cr * vr - ci * vi + (ar * ir - ai * ii);
        now.currentImaginary = cr * vi + ci * vr + (ar * ii + ai * ir);
        now.log += block.log[i];
        if (isLast[i]) {
            const double real = now.voltageReal + between.source * now.currentReal;
            const double imaginary = now.voltageImaginary + between.source * now.currentImaginary;
            lossesDb[loops] = real * real + imaginary * imaginary;
            nepers[loops++] = now.log;
            now = Walk::from(between.load);
        } else {
            keepInRange(now);
        }
    }
    at = now;
    const double perReference =
        1 / ((between.source + between.load) * (between.source + between.load));
#pragma GCC ivdep
    for (std::size_t i = 0; i < loops; ++i)
        lossesDb[i] = decibelOfNeper * (0.5 * std::log(lossesDb[i] * perReference) + nepers[i]);
    return loops;
}

} // namespace loopwright::kernel
