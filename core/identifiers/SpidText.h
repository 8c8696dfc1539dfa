#pragma once
// The sentence of a SPID fault, filled with what was found.

#include "core/identifiers/SpidRules.h"

#include <string>

namespace loopwright {

/// What is wrong and what to do, no full stop.
Text reasonOf(const SpidJudge &judge, const SpidFaultFound &fault);
/// Appends the same sentence in English (UTF-8): a long list makes no Text of each row.
void appendReason(std::string &text, const SpidJudge &judge, const SpidFaultFound &fault);

} // namespace loopwright
