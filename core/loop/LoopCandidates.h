#pragma once
// The ways in which a record of a pair is usually wrong, each fitted to what was measured on it.
// Used by LoopComparison; of no use alone.

#include "core/loop/DesignRules.h"
#include "core/loop/MeasuredLoop.h"

namespace loopwright {

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
    Text text;          ///< what is supposed, e.g. "a bridged tap of 24 AWG, 1500 ft, at …"
    double misfit = 0;  ///< sum of squared differences, in tolerances, that it leaves
    double stretch = 0; ///< how unlikely it is of itself
    Text forecast;      ///< what it would give at each measured figure

    double score() const { return misfit + stretch; }
};

/// Squared differences between measurement and prediction, each in its tolerance, summed.
double loopMisfit(const LoopMakeup &makeup, const MeasuredLoop &measured, const LimitSet &limits);
/// Difference in ohm that the model and the meter explain.
double resistanceTolerance(double predictedOhm, const LimitSet &limits);

/// The best candidate of each cause that applies to this make-up, in no order.
std::vector<LoopCandidate> loopCandidates(const LoopMakeup &makeup, const MeasuredLoop &measured,
                                          const LimitSet &limits);

} // namespace loopwright
