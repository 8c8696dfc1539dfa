#pragma once
// What a criterion means to the person who ordered the line: one short sentence each, without the
// trade's words.

#include "core/acceptance/Decision.h"

namespace loopwright {

/// What the outcome of this criterion means, and what is told beside it; of a key without a row,
/// its own reason.
QString plainMeaning(const CriterionResult &criterion);
/// "met", "not met", "not shown", "not needed".
QString plainOutcome(CriterionOutcome outcome);
/// "With 95 % confidence, at most one bit in 12 million arrived wrong in this run." of the figures
/// behind a counted run, at the confidence of the limit set; empty if they bound nothing.
QString plainProof(const QJsonObject &proven);

} // namespace loopwright
