#include "core/loop/LineConstants.h"

#include <array>
#include <cmath>
#include <numbers>

namespace loopwright {

namespace {

/// Ohm per 1000 ft of pair at 70 °F, in the order of knownGauges(): published equipment practice
/// (line card for HDSL4, 61223404L2-5A p. 20, table 9).
constexpr std::array<double, 4> ohmPerKiloFoot{16.465, 33.006, 52.498, 83.475};

/// EPE in the order of knownDiameters().
constexpr std::array<LineConstants, 5> european{{
    {409.0, 0.3822, 607.5e-6, 500.0e-6, 5.269, 609.0e3, 40e-9},
    {280.0, 0.0969, 587.3e-6, 426.0e-6, 1.385, 745.9e3, 50e-9},
    {179.2, 0.0561, 674.6e-6, 532.7e-6, 1.195, 664.7e3, 50e-9},
    {113.0, 0.0257, 699.4e-6, 477.2e-6, 1.0956, 265.8e3, 45e-9},
    {55.1, 0.0094, 750.9e-6, 520.5e-6, 0.9604, 123.8e3, 40e-9},
}};
static_assert(ohmPerKiloFoot.size() + european.size() == wireCount);

/// Shape of U70 for a pair of `r` ohm/km: that of the published 24 AWG constants.
constexpr LineConstants unified(double r)
{
    return {r,
            1.7418e-6 * r * r,
            617.29539e-6,
            478.97099e-6,
            1.1529766,
            3172.3 * r,
            usualCapacitanceNfPerKm * 1e-9};
}

} // namespace

LineConstants LineConstants::warmed(double factor) const
{
    LineConstants warm = *this;
    warm.r *= factor;
    warm.a *= factor * factor;
    warm.fm *= factor;
    return warm;
}

LineConstants lineConstants(const Wire &wire, double fahrenheit,
                            std::optional<double> capacitanceNfPerKm)
{
    const int number = wireNumber(wire);
    Q_ASSERT(number >= 0);
    const double factor = temperatureFactor(fahrenheit);
    const auto row = std::size_t(number);
    LineConstants constants =
        row < ohmPerKiloFoot.size()
            ? unified(ohmPerKiloFoot[row] / 0.3048).warmed(factor)
            : european[row - ohmPerKiloFoot.size()].warmed(factor / temperatureFactor(68));
    if (capacitanceNfPerKm)
        constants.c = *capacitanceNfPerKm * 1e-9;
    return constants;
}

Propagation propagation(const LineConstants &constants, double frequencyHz)
{
    const double w = 2 * std::numbers::pi * frequencyHz;
    const double r2 = constants.r * constants.r;
    const double r = std::sqrt(std::sqrt(r2 * r2 + constants.a * frequencyHz * frequencyHz));
    const double x = std::pow(frequencyHz / constants.fm, constants.b);
    const double wl = w * (constants.l0 + constants.lInf * x) / (1 + x);
    const double wc = w * constants.c;
    if (constants.g0 != 0) {
        const std::complex<double> z(r, wl);
        const std::complex<double> y(constants.g0 * std::pow(frequencyHz, constants.ge), wc);
        const std::complex<double> gamma = std::sqrt(z * y);
        return {gamma, z / gamma, gamma / z};
    }
    // Without leakage the roots have a closed form, free of cancellation and much quicker.
    const double m = std::sqrt(r * r + wl * wl);
    const double beta = std::sqrt(0.5 * wc * (m + wl));
    const double alpha = 0.5 * wc * r / beta;
    return {{alpha, beta}, {beta / wc, -alpha / wc}, {beta / m, alpha / m}};
}

} // namespace loopwright
