#pragma once
// The chain matrices of many elements at once, for LoopBatch. The source is compiled for each width
// of vector registers, uses the mathematics library's vector functions, and picks at run time.

#include <array>
#include <cstddef>
#include <cstdint>

namespace loopwright::kernel {

/// Constants of the cables at one frequency, by cable number, at the temperature of their set.
struct Cables
{
    const double *r2;     ///< r^2
    const double *af2;    ///< a f^2
    const double *x;      ///< (f/fm)^b
    const double *b;      ///< shape of the inductance
    const double *wl0;    ///< 2 pi f L0
    const double *wlInf;  ///< 2 pi f Linf
    const double *halfWc; ///< half of 2 pi f C
    const double *perWc;  ///< 1 / (2 pi f C)
    double w;             ///< 2 pi f
};

inline constexpr std::int32_t section = 0;
inline constexpr std::int32_t tap = 1;
inline constexpr std::int32_t coil = 2;

/// Elements one after the other. A cable warmed by the factor k has r k, a k^2 and fm k. A coil
/// names any cable.
struct Elements
{
    const std::int32_t *type;
    const std::int32_t *cable;
    const double *warmth;    ///< k
    const double *logWarmth; ///< ln k
    const double *amount;    ///< km; of a coil henry
    const double *ohms;      ///< of a coil
};

inline constexpr std::size_t blockSize = 512;
using Column = std::array<double, blockSize>;

/// Chain matrices in columns; see ChainMatrix. The imaginary part of the logarithm is left out.
struct alignas(64) Block
{
    Column aReal, aImaginary, bReal, bImaginary, cReal, cImaginary, log;
};

/// `count` elements, at most `blockSize`.
void workOut(const Cables &cables, const Elements &elements, std::size_t count, Block &block);

/// Where a walk stands between two blocks.
struct Walk
{
    double voltageReal = 0, voltageImaginary = 0, currentReal = 0, currentImaginary = 0, log = 0;

    static Walk from(double loadOhm) { return {loadOhm, 0, 1, 0, 0}; }
};

struct Ohms
{
    double source = 0;
    double load = 0;
};

/// Walks over a block as LoopWave does and writes the loss in dB of each loop that ends in it.
/// Returns how many they were, at most `count`.
std::size_t walk(const Block &block, const std::uint8_t *isLast, std::size_t count,
                 const Ohms &between, Walk &at, double *lossesDb);

} // namespace loopwright::kernel
