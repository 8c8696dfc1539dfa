#pragma once
// Is this make-up fit for the service? Each rule is a result of its own with figure, limit and
// source; the qualification of a basic-rate loop is the convention stated at `qualify`, the design
// rules of plant (PlantDesign.h) stand beside it for information. Remedies.h says what would help.

#include "core/loop/LoopLoss.h"
#include "core/loop/PlantDesign.h"
#include "core/loop/RuleResult.h"
#include "core/loop/VoiceBand.h"

namespace loopwright {

struct LoopQualification
{
    Suitability verdict = Suitability::Suitable;
    std::vector<Text> reasons; ///< every rule that is not met, or one sentence that all are
    std::vector<RuleResult> rules;
    double insertionLossDb = 0; ///< at `frequencyHz` between `between`
    double frequencyHz = 0;
    Terminations between;
    double marginDb = 0; ///< error of the prediction, counted on both sides of the limit
    double dcResistanceOhm = 0;
    double workingLengthFt = 0; ///< without taps
    double bridgedTapFt = 0;
    int loadCoils = 0;
    double temperatureF = 0;
    double hottestF = 0; ///< what is judged: `loop_hottest_f`, or the make-up's own if that is more
    double hotLossDb = 0;
    double hotDcResistanceOhm = 0;
    std::vector<RuleSet> designs; ///< for information; they do not decide

    /// The object of the `qualify loop` contract.
    QJsonObject toJson() const;
};

/// Error of a predicted loss: a share of it, or a fixed figure if that is more.
double lossMarginDb(double lossDb, const LimitSet &limits);

/// For basic rate (convention of this program), resistance and loss at the hottest that the limit
/// set foresees, since both grow with it: not suitable with any load coil, a resistance over
/// its limit, or a loss over its limit by more than the margin; suitable if the loss is under
/// its limit by the margin, length with taps and taps alone are within theirs; else marginal.
LoopQualification qualify(const LoopMakeup &makeup, const LimitSet &limits);

} // namespace loopwright
