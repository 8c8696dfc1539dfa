#pragma once
// What a fact proves, by what a change makes old.

#include "core/acceptance/Fact.h"

namespace loopwright {

enum class Proves
{
    Nothing,
    Pair,   ///< safety, loop, analog quantities
    Layer1, ///< synchronisation
    Upper,  ///< layers 2 and 3, calls, detector check, run
};

Proves provenBy(const Fact &fact);
/// Whether it proves anything: a change, a void, a closing do not.
bool isEvidence(const Fact &fact);
/// Whether a change of that makes such a proof old.
bool retires(ChangedWhat what, Proves proof);

} // namespace loopwright
