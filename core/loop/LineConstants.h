#pragma once
// Primary constants of a pair of wires, per kilometre of pair, over frequency:
//   R(f) = (r^4 + a f^2)^(1/4), L(f) = (L0 + Linf (f/fm)^b) / (1 + (f/fm)^b), C constant,
//   G(f) = g0 f^ge.
// The form is the published subscriber-line one (from memory of the cable reference models of
// ETSI). Two sets: "U70", unified constants of polyethylene cable by gauge at 70 °F (computed from
// published resistances; compared with published losses: 3 % or 0.5 dB), and "EPE", European
// polyethylene cable by diameter at 20 °C (public source repositories; no standard's text read).

#include "core/loop/Wire.h"

#include <complex>
#include <optional>

namespace loopwright {

struct LineConstants
{
    double r = 0;    ///< DC resistance of both wires, ohm/km
    double a = 0;    ///< skin effect, ohm^4 / (km^4 Hz^2)
    double l0 = 0;   ///< inductance at low frequency, H/km
    double lInf = 0; ///< inductance at high frequency, H/km
    double b = 1;    ///< shape of the change between the two
    double fm = 1;   ///< frequency of the change, Hz
    double c = 0;    ///< F/km
    double g0 = 0;   ///< S/km at 1 Hz; 0 for both shipped sets
    double ge = 1;

    /// Of the same cable warmed so that its resistance is `factor` times as high. Skin effect
    /// depends on f/r alone, so a goes with the square of r and fm with r.
    LineConstants warmed(double factor) const;
};

/// k(T) = 1 + 0.0021818 (T - 70 °F): resistance of copper over that at 70 °F (fits the
/// published resistance table at 70, 90, 120 and 140 °F to its last digit).
inline constexpr double temperatureFactor(double fahrenheit)
{
    return 1 + 0.0021818 * (fahrenheit - 70);
}

/// Constants of a known wire at a temperature. U70 times k(T); EPE times k(T)/k(68 °F), no
/// temperature law came with that set (convention). Asserts that the wire is known.
LineConstants lineConstants(const Wire &wire, double fahrenheit,
                            std::optional<double> capacitanceNfPerKm = {});

/// What a wave sees of a cable at one frequency.
struct Propagation
{
    std::complex<double> gamma; ///< propagation constant, neper and radian per kilometre
    std::complex<double> z0;    ///< characteristic impedance, ohm
    std::complex<double> y0;    ///< 1 / z0
};
/// Above 0 Hz; meant for 20 Hz to some MHz.
Propagation propagation(const LineConstants &constants, double frequencyHz);

} // namespace loopwright
