#pragma once
// Exponential, sine and cosine, and logarithm as plain arithmetic without a branch, so that a
// compiler vectorises a loop over them on any processor; a function of the mathematics
// library is called once for each element there. Good to 1e-15 within the ranges stated, which
// nothing checks. Rounding is done by a sum, which -ffast-math would take away.

#include <bit>
#include <cstdint>
#include <numbers>

namespace loopwright::lanes {

/// Added to a number below 2^51, it leaves the nearest whole number in the last digits.
inline constexpr double roundingSum = 0x1.8p52;

inline std::uint64_t bitsOf(double value)
{
    return std::bit_cast<std::uint64_t>(value);
}

inline double fromBits(std::uint64_t bits)
{
    return std::bit_cast<double>(bits);
}

/// c0 + c1 x + c2 x^2 + ...
inline double series(double, double c)
{
    return c;
}
template<class... Rest>
inline double series(double x, double c, Rest... rest)
{
    return c + x * series(x, rest...);
}

/// e^x from -700 to 700; below, e^-700.
inline double exponential(double x)
{
    x = x < -700 ? -700 : x;
    const double rounded = x * std::numbers::log2e + roundingSum;
    const double n = rounded - roundingSum;
    // ln 2 in two parts: n times the first is exact.
    const double r = (x - n * 0x1.62e42feep-1) - n * 0x1.a39ef35793c76p-33;
    const double power =
        series(r, 1.0, 1.0, 1. / 2, 1. / 6, 1. / 24, 1. / 120, 1. / 720, 1. / 5040, 1. / 40320,
               1. / 362880, 1. / 3628800, 1. / 39916800, 1. / 479001600);
    return fromBits(bitsOf(power) + (bitsOf(rounded) << 52)); // times 2^n
}

struct SineCosine
{
    double sine;
    double cosine;
};

/// Of an angle in radian, to a million either way.
inline SineCosine sineCosine(double angle)
{
    const double rounded = angle * (2 / std::numbers::pi) + roundingSum;
    const double n = rounded - roundingSum; // quarter turns
    // A quarter turn in two parts: n times the first is exact.
    const double r = (angle - n * 0x1.921fb544p+0) - n * 0x1.0b4611a626331p-34;
    const double z = r * r;
    const double s = r + r * z *
                             series(z, -1. / 6, 1. / 120, -1. / 5040, 1. / 362880, -1. / 39916800,
                                    1. / 6227020800, -1. / 1307674368000);
    const double c = series(z, 1.0, -1. / 2, 1. / 24, -1. / 720, 1. / 40320, -1. / 3628800,
                            1. / 479001600, -1. / 87178291200, 1. / 20922789888000);
    const std::uint64_t quarter = bitsOf(rounded);
    const bool isOdd = (quarter & 1) != 0;
    const double sine = isOdd ? c : s;
    const double cosine = isOdd ? s : c;
    return {fromBits(bitsOf(sine) ^ ((quarter & 2) << 62)),
            fromBits(bitsOf(cosine) ^ (((quarter + 1) & 2) << 62))};
}

/// ln x of a normal number above 0.
inline double logarithm(double x)
{
    // x = m 2^n, m from the root of 1/2 to the root of 2.
    constexpr std::uint64_t rootOfHalf = 0x3fe6a09e667f3bcd;
    constexpr std::uint64_t offset = 1024;
    const std::uint64_t above = bitsOf(x) - rootOfHalf;
    const double m = fromBits(bitsOf(x) - ((above >> 52) << 52));
    const double n =
        fromBits(((above + (offset << 52)) >> 52) | bitsOf(0x1p52)) - (0x1p52 + double(offset));
    const double s = (m - 1) / (m + 1);
    const double z = s * s;
    return n * std::numbers::ln2 + s * series(z, 2.0, 2. / 3, 2. / 5, 2. / 7, 2. / 9, 2. / 11,
                                              2. / 13, 2. / 15, 2. / 17, 2. / 19, 2. / 21);
}

} // namespace loopwright::lanes
