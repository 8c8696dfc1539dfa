#pragma once
// What was measured on a pair, to be held against what its make-up predicts.

#include "core/loop/LoopLoss.h"

#include <optional>
#include <vector>

namespace loopwright {

struct LossReading
{
    double frequencyHz = 40000;
    double lossDb = 0;
    Terminations between;

    bool operator==(const LossReading &) const = default;
};

struct MeasuredLoop
{
    std::optional<double> dcResistanceOhm;
    std::vector<LossReading> losses;
};

} // namespace loopwright
