#pragma once
// Is this make-up fit for the service? Each rule is a result of its own with figure, limit and
// source; the qualification of a basic-rate loop is the convention stated at `qualify`, the design
// rules of plant stand beside it for information. What would mend a loop is computed, not guessed.

#include "core/base/LimitSet.h"
#include "core/loop/LoopLoss.h"

namespace loopwright {

enum class Suitability
{
    Suitable,
    Marginal,
    NotSuitable,
};
template<>
struct Words<Suitability>
{
    static constexpr std::pair<Suitability, const char *> table[] = {
        {Suitability::Suitable, "suitable"},
        {Suitability::Marginal, "marginal"},
        {Suitability::NotSuitable, "not_suitable"}};
};

struct RuleResult
{
    QString key;  ///< stable, e.g. "bri_loss"
    QString name; ///< for a person
    Suitability verdict = Suitability::Suitable;
    double measured = 0; ///< the computed or counted figure
    double limit = 0;
    QString unit;
    QString source;
    QString reason; ///< one sentence with the figure and the limit
};

/// A set of rules under one name; its verdict is the worst of its results.
struct RuleSet
{
    QString key;  ///< "resistance_design", "revised_resistance_design", "carrier_serving_area"
    QString name; ///< for a person
    std::vector<RuleResult> rules;

    Suitability verdict() const;
};

struct LoopQualification
{
    Suitability verdict = Suitability::Suitable;
    QStringList reasons; ///< every rule that is not met, or one sentence that all are
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
    double hotLossDb = 0; ///< the same at 140 °F, where the cable hangs in the sun
    double hotDcResistanceOhm = 0;
    std::vector<RuleSet> designs; ///< for information; they do not decide

    /// The object of the `qualify loop` contract.
    QJsonObject toJson() const;
};

/// Error of a predicted loss: a share of it, or a fixed figure if that is more.
double lossMarginDb(double lossDb, const LimitSet &limits);

/// For basic rate (convention of this program): not suitable with any load coil, a resistance over
/// its limit, or a loss over its limit by more than the margin; suitable where the loss is under
/// its limit by the margin, length with taps and taps alone are within theirs; else marginal.
LoopQualification qualify(const LoopMakeup &makeup, const LimitSet &limits);

RuleSet resistanceDesign(const LoopMakeup &makeup, const LimitSet &limits);
RuleSet revisedResistanceDesign(const LoopMakeup &makeup, const LimitSet &limits);
RuleSet carrierServingArea(const LoopMakeup &makeup, const LimitSet &limits);

/// For an analog line: resistance, and load coils where the design rule wants them and nowhere
/// else, at their spacing; predicted loss at 1004 Hz, slope and loop current for information.
struct VoiceBandQualification
{
    Suitability verdict = Suitability::Suitable;
    QStringList reasons;
    std::vector<RuleResult> rules;
    double dcResistanceOhm = 0;
    double workingLengthFt = 0;
    double bridgedTapFt = 0;
    int loadCoils = 0;
    double loss1004Db = 0;    ///< predicted, 900 ohm to 600 ohm
    double slopeDb = 0;       ///< predicted; see AnalogQuantity.h
    double loopCurrentMa = 0; ///< predicted; see AnalogQuantity.h

    QJsonObject toJson() const;
};
VoiceBandQualification qualifyVoiceBand(const LoopMakeup &makeup, const LimitSet &limits);

/// One work at the cable that brings a basic-rate loop nearer to its limits.
struct Mend
{
    std::vector<std::size_t> remove; ///< positions in the make-up
    QString text;                    ///< "take out the bridged tap of 24 AWG, 1500 ft, at …"
    double lossAfterDb = 0;
    double lossGainDb = 0; ///< loss now less loss afterwards
    double dcResistanceAfterOhm = 0;
    Suitability verdictAfter = Suitability::Suitable;
};

/// Each tap and coil alone, and the smallest sets of them that reach a better verdict. Best first:
/// by verdict, then by how much must be taken out, then by loss. Empty for a suitable loop.
std::vector<Mend> mends(const LoopMakeup &makeup, const LimitSet &limits);

} // namespace loopwright
