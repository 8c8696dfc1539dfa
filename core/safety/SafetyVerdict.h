#pragma once
// What the readings of a safety card mean. Each voltage is held to the stop limits alone and first:
// no contradiction among the readings removes a hazard. Then comes what the readings cannot be at
// once, and then what the card does not say.

#include "core/base/LimitSet.h"
#include "core/base/Remark.h"
#include "core/safety/SafetyFact.h"

#include <vector>

namespace loopwright {

enum class SafetyOutcome
{
    Clear,
    Incomplete,     ///< a reading or a confirmation is missing, or the readings do not fit
    ForeignBattery, ///< direct voltage on a pair that should be dead; closes the work, is no hazard
    Hazard,
};
template<>
struct EnumCodes<SafetyOutcome>
{
    static constexpr std::pair<SafetyOutcome, const char *> table[] = {
        {SafetyOutcome::Clear, "clear"},
        {SafetyOutcome::Incomplete, "incomplete"},
        {SafetyOutcome::ForeignBattery, "foreign_battery"},
        {SafetyOutcome::Hazard, "hazard"}};
};

/// One reading that is more than it should be.
struct VoltageFinding
{
    WirePair pair = WirePair::TipRing;
    bool alternating = false;
    double volts = 0; ///< as read
    double limit = 0;
    QString limitKey; ///< of the limit set
    Text reason;      ///< one sentence with the figure and the limit
    Text toDo;        ///< what to do now
};

/// Readings that cannot be true at once.
struct VoltageMisfit
{
    bool alternating = false;
    Text reason; ///< one sentence with the figures, what it may be, and what to check
};

struct SafetyVerdict
{
    SafetyOutcome outcome = SafetyOutcome::Clear;
    std::vector<VoltageFinding> hazards;   ///< stop, move away, report
    std::vector<VoltageFinding> batteries; ///< of another line
    std::vector<VoltageFinding> troubles;  ///< to be cleared, not a hazard
    std::vector<VoltageMisfit> misfits;
    bool readTwice = false;     ///< the misfits were read before too: they stand, as a trouble
    std::vector<Text> missing;  ///< readings and confirmations
    bool meterUnproved = false; ///< it was said that the meter was not proved on a known source

    /// What a clear card leaves to be told: troubles to clear, a meter that was not proved.
    std::vector<Remark> remarks() const;
    /// One sentence for the outcome; `clock`: when it was read, if that is to be said.
    Text text(const QString &clock = {}) const;
};

/// A hazard is an alternating voltage above `hazard_ac_v` (`hazard_ac_wet_v` if the place is wet),
/// or a direct one above `hazard_dc_v`. From `foreign_battery_dc_v` on a direct voltage on a pair
/// whose office is disconnected is foreign battery. Magnitudes count. By Kirchhoff's law of
/// voltages tip to ring is tip to ground less ring to ground (direct), and each alternating voltage
/// is at most the sum of the two others, within 2 V or 5 %; if no minus was typed, a sum of the
/// direct ones is believed as well. `before` is an earlier card of the same visit and place: like
/// readings that do not fit, read twice, stand.
SafetyVerdict judge(const SafetyFact &fact, const LimitSet &limits,
                    const SafetyFact *before = nullptr);

} // namespace loopwright
