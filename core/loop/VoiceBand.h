#pragma once
// Is this pair fit for an analog line? Load coils are right here where the design rule wants them:
// beyond 18 kft, at the spacing of their inductance, and nowhere else.

#include "core/loop/LoopMakeup.h"
#include "core/loop/RuleResult.h"

namespace loopwright {

struct VoiceBandQualification
{
    Suitability verdict = Suitability::Suitable;
    std::vector<Text> reasons;
    std::vector<RuleResult> rules;
    double dcResistanceOhm = 0;
    double workingLengthFt = 0;
    double bridgedTapFt = 0;
    int loadCoils = 0;
    // Predicted, for information; the analog quantities judge what was measured (AnalogQuantity.h).
    double loss1004Db = 0; ///< 900 ohm to 600 ohm
    double slopeDb = 0;
    double loopCurrentMa = 0;

    QJsonObject toJson() const;
};

/// What the DC resistance of this make-up is held against. A loop is right by either design: the
/// older one at any length, the revised one, which allows more, from 18 kft to 24 kft with coils.
const Limit &voiceResistanceLimit(const LoopMakeup &makeup, const LimitSet &limits);

/// Not suitable over the resistance of the loop's design, at the hottest that the limit set
/// foresees, or if coils are wanted and missing; marginal if coils stand that are not wanted or are
/// wrongly spaced (the first of them half a spacing from the office), if a tap hangs between coils,
/// or if the end section or the taps exceed the design.
VoiceBandQualification qualifyVoiceBand(const LoopMakeup &makeup, const LimitSet &limits);

} // namespace loopwright
