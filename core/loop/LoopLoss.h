#pragma once
// Loss, phase and delay of a loop between resistive terminations, by chain matrices applied from
// the customer to the office: sections of cable in series, taps as open stubs, coils as series
// impedances.
//   insertion loss dB = 20 log10 |(A Zl + B + C Zs Zl + D Zs) / (Zs + Zl)|
// A loss needs no allocation; a hundred thousand at once go through LoopBatch.h. Any length is
// safe: the growing exponential is kept as a sum of exponents (LoopWave.h).

#include "core/loop/LineConstants.h"
#include "core/loop/LoopMakeup.h"

namespace loopwright {

struct Terminations
{
    double sourceOhm = 135; ///< towards the office; above 0
    double loadOhm = 135;   ///< towards the customer; above 0

    bool operator==(const Terminations &) const = default;
};

/// 900 ohm at the office, 600 ohm at the customer: the voice band (common practice).
inline constexpr Terminations voiceBandTerminations{900, 600};

double insertionLossDb(const LoopMakeup &makeup, double frequencyHz,
                       const Terminations &between = {});

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

/// Both wires and all coils; a tap adds nothing.
double dcResistanceOhm(const LoopMakeup &makeup);

} // namespace loopwright
