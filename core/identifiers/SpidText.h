#pragma once
// The sentence of a SPID fault, filled with what was found.

#include "core/identifiers/SpidRules.h"

#include <string>

namespace loopwright {

/// Appends the sentence (UTF-8, no full stop) that says what is wrong and what to do.
void appendReason(std::string &text, const SpidJudge &judge, const SpidFaultFound &fault);

} // namespace loopwright
