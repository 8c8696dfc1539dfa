#pragma once
// A measured resistance or loss against what the make-up predicts. Where they disagree, the ways in
// which a record is usually wrong are tried one by one: each is fitted to what was measured, and
// the one that explains it best at the least stretch is named, with the others behind it.

#include "core/loop/DesignRules.h"

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

/// One figure beside its prediction.
struct LoopDifference
{
    QString name; ///< "DC resistance", "loss at 40000 Hz"
    QString unit;
    double measured = 0;
    double predicted = 0;
    double tolerance = 0; ///< difference that the model and the meter explain
    bool agrees = true;
    QString reason;
};

enum class LoopCause
{
    AsRecorded,
    Length,      ///< longer or shorter than recorded
    HiddenTap,   ///< a bridged tap that is not on record
    TapGone,     ///< a recorded tap that is not there
    HiddenCoil,  ///< a load coil that is not on record
    CoilGone,    ///< a recorded coil that is not there
    Gauge,       ///< a section of another gauge than recorded
    Temperature, ///< warmer or colder cable than recorded
    Unexplained, ///< no single candidate fits
};
template<>
struct EnumCodes<LoopCause>
{
    static constexpr std::pair<LoopCause, const char *> table[] = {
        {LoopCause::AsRecorded, "as_recorded"},
        {LoopCause::Length, "length"},
        {LoopCause::HiddenTap, "hidden_tap"},
        {LoopCause::TapGone, "tap_gone"},
        {LoopCause::HiddenCoil, "hidden_coil"},
        {LoopCause::CoilGone, "coil_gone"},
        {LoopCause::Gauge, "gauge"},
        {LoopCause::Temperature, "temperature"},
        {LoopCause::Unexplained, "unexplained"}};
};

struct LoopCandidate
{
    LoopCause cause = LoopCause::AsRecorded;
    LoopMakeup makeup;  ///< the record as this candidate would have it
    QString text;       ///< what is supposed, e.g. "a bridged tap of 24 AWG, 1500 ft, at …"
    double misfit = 0;  ///< sum of squared differences, in tolerances, that it leaves
    double stretch = 0; ///< how unlikely it is of itself
    QString forecast;   ///< what it would give at each measured figure

    double score() const { return misfit + stretch; }
};

struct LoopComparison
{
    std::vector<LoopDifference> differences;
    bool agrees = true;
    std::vector<LoopCandidate> candidates; ///< best of each cause, most likely first; empty where
                                           ///< all agrees
    LoopCause mostLikely = LoopCause::AsRecorded;
    QString why; ///< one or two sentences for a person

    QJsonObject toJson() const;
};

/// `measured` may hold nothing; then nothing differs. Without any figure off by more than its
/// tolerance the record stands; else the candidate with the least score, provided that it brings
/// every figure within tolerance. The scores' weights are a convention of this program.
LoopComparison compareLoop(const LoopMakeup &makeup, const MeasuredLoop &measured,
                           const LimitSet &limits);

} // namespace loopwright
