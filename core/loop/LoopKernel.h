#pragma once
// The walk over many loops side by side, one element of each at a time, for LoopBatch. The source
// is compiled for each width of vector registers and picks at run time; without such registers it
// gives the same losses, more slowly.

#include <array>
#include <cstddef>
#include <cstdint>

namespace loopwright::kernel {

/// Constants of the cables at one frequency, by cable number, at 70 °F.
struct Cables
{
    const double *r2;     ///< r^2
    const double *af2;    ///< a f^2
    const double *x;      ///< (f/fm)^b
    const double *b;      ///< shape of the inductance
    const double *wl0;    ///< 2 pi f L0
    const double *wlInf;  ///< 2 pi f Linf
    const double *halfWc; ///< half of 2 pi f C
    double w;             ///< 2 pi f
};

struct Ohms
{
    double source = 0;
    double load = 0;
};

/// Loops that are walked together. More would not stay in the cache that is next to a processor.
inline constexpr std::size_t laneCount = 128;
/// Lanes are worked on in groups of as many, so that no vector is left half full.
inline constexpr std::size_t laneGroup = 8;
template<class T>
using Lanes = std::array<T, laneCount>;

enum Type : std::int32_t
{
    nothing,
    section,
    tap,
    coil,
};

/// One element of each loop.
struct alignas(64) Elements
{
    Lanes<double> amount;      ///< km; of a coil henry
    Lanes<double> ohms;        ///< of a coil, else 0
    Lanes<std::int32_t> type;  ///< a Type
    Lanes<std::int32_t> cable; ///< a coil, and nothing, name any cable
};

/// Where each loop stands: voltage and current times exp(log), as in LoopWave.
struct alignas(64) Waves
{
    Lanes<double> warmth;    ///< k(T) of LineConstants.h: a warm cable has r k, a k^2 and fm k
    Lanes<double> logWarmth; ///< ln k
    Lanes<double> voltageReal, voltageImaginary, currentReal, currentImaginary, log;
};

// Each works on `count` lanes: a multiple of `laneGroup`, at most `laneCount`.

/// One ampere through the load of each; `fahrenheit` is the temperature of each.
void start(const Lanes<double> &fahrenheit, std::size_t count, const Ohms &between, Waves &waves);
/// One element further towards the office.
void pass(const Cables &cables, const Elements &elements, std::size_t count, Waves &waves);
/// Losses in dB.
void finish(const Waves &waves, std::size_t count, const Ohms &between, Lanes<double> &lossesDb);

} // namespace loopwright::kernel
