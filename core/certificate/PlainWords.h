#pragma once
// What a criterion means to the person who ordered the line: one short sentence each, without the
// trade's words. One row per criterion key.

#include "core/acceptance/Decision.h"

namespace loopwright {

/// The sentence for the outcome of this criterion; of a key without a row, its own reason.
QString plainMeaning(const CriterionResult &criterion);
/// "met", "not met", "not shown", "not needed".
QString plainOutcome(CriterionOutcome outcome);
/// Keys that have a row of their own.
QStringList plainKeys();

} // namespace loopwright
