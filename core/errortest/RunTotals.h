#pragma once
// Whether the totals of a run can all be true. They are typed from a test set's display, and a slip
// there must not pass for a clean run. Severely errored seconds and unavailable time as in G821.h.

#include "core/errortest/RunFact.h"

namespace loopwright {

struct TotalsContradiction
{
    const char *key; ///< of the total that the others do not allow: "errored_seconds", …
    /// "2 bit errors cannot make 9 errored seconds without a loss of synchronisation"
    Text what;
};

/// The first contradiction among the totals that were recorded or, if the run has a list of
/// seconds, between them and what the seconds give.
std::optional<TotalsContradiction> contradictionIn(const RunFact &run);

} // namespace loopwright
