#pragma once
// Loss, phase and delay of a loop between resistive terminations, by chain matrices applied from
// the customer to the office: sections of cable in series, taps as open stubs, coils as series
// impedances.
//   insertion loss dB = 20 log10 |(A Zl + B + C Zs Zl + D Zs) / (Zs + Zl)|
// No allocation on the way of a loss, so that a hundred thousand loops take a moment. Any length is
// safe: the growing exponential is kept as a sum of exponents.

#include "core/loop/LineConstants.h"

namespace loopwright {

struct Terminations
{
    double sourceOhm = 135; ///< towards the office; above 0
    double loadOhm = 135;   ///< towards the customer; above 0

    bool operator==(const Terminations &) const = default;
};

/// 900 ohm at the office, 600 ohm at the customer: the voice band (common practice).
inline constexpr Terminations voiceBandTerminations{900, 600};

/// Voltage and current at one point of a loop for one frequency, walking from the load to the
/// source; the chain matrix of each element is applied on the left. Scaled by exp(scale).
class LoopWave
{
public:
    explicit LoopWave(double loadOhm)
        : m_voltage(loadOhm)
        , m_current(1)
    {
    }
    void passSection(const Propagation &cable, double kilometres);
    void passTap(const Propagation &cable, double kilometres);
    void passCoil(double ohms, double reactanceOhm);

    std::complex<double> inputOhm() const { return m_voltage / m_current; }
    /// Natural logarithm of (V + Zs I) / (Zs + Zl): real part loss in neper, imaginary part phase
    /// lag in radian with the turns of the sections counted in.
    std::complex<double> logInsertion(double sourceOhm, double loadOhm) const;
    /// The real part alone, in decibel.
    double lossDb(double sourceOhm, double loadOhm) const;

private:
    void keepInRange();

    std::complex<double> m_voltage;
    std::complex<double> m_current;
    std::complex<double> m_scale{0, 0};
};

double insertionLossDb(const LoopMakeup &makeup, double frequencyHz,
                       const Terminations &between = {});
/// Loss at one frequency of many loops; `losses` is as long as `makeups`.
void insertionLossesDb(std::span<const LoopMakeup> makeups, double frequencyHz,
                       const Terminations &between, std::span<double> losses);

struct LoopResponse
{
    double frequencyHz = 0;
    double lossDb = 0;
    double phaseRad = 0;     ///< lag of the customer's end, turns counted in
    double delaySeconds = 0; ///< group delay: slope of the phase lag over angular frequency
};
LoopResponse loopResponse(const LoopMakeup &makeup, double frequencyHz,
                          const Terminations &between = {});

/// `points` responses from `fromHz` to `toHz`, evenly spaced on a logarithmic axis, both included.
std::vector<LoopResponse> loopCurve(const LoopMakeup &makeup, double fromHz = 200,
                                    double toHz = 1e6, int points = 200,
                                    const Terminations &between = {});

/// What the office sees into the loop with the load at the customer's end.
std::complex<double> inputImpedanceOhm(const LoopMakeup &makeup, double frequencyHz,
                                       double loadOhm);

/// Both wires and all coils; a tap adds nothing.
double dcResistanceOhm(const LoopMakeup &makeup);

} // namespace loopwright
