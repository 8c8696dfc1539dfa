#pragma once
// What would mend a basic-rate loop: which tap to remove, which coil to take out, each with the
// loss that the loop would have afterwards. Computed for every choice, never judged by length
// alone: a tap near a quarter wave does the most harm.

#include "core/loop/DesignRules.h"

namespace loopwright {

/// One work at the cable that brings a basic-rate loop nearer to its limits.
struct Remedy
{
    std::vector<std::size_t> remove; ///< positions in the make-up
    Text text;                       ///< "Take out the load coil of 88 mH, at 3000 ft from …"
    double lossAfterDb = 0;
    double lossGainDb = 0; ///< loss now less loss afterwards
    double dcResistanceAfterOhm = 0;
    Suitability verdictAfter = Suitability::Suitable;

    QJsonObject toJson() const;
};

/// Each tap and coil alone, and the smallest sets of them that reach a better verdict. Best first:
/// by verdict, then by how much must be taken out, then by loss. Empty for a suitable loop and for
/// one without taps and coils. Sets are tried of up to ten taps; of a loop with more, single taps
/// and all of them.
std::vector<Remedy> remedies(const LoopMakeup &makeup, const LimitSet &limits);

} // namespace loopwright
