#pragma once
// Severity, stable code and sentence of every SPID fault, in one table.

#include "core/identifiers/SpidRules.h"

#include <string>
#include <string_view>

namespace loopwright {

Severity severityOf(SpidFault fault);
/// e.g. "spid_terminal_id".
std::string_view codeOf(SpidFault fault);
/// Appends the sentence (UTF-8, no full stop) that tells what is wrong and what to do.
void appendReason(std::string &text, const SpidJudge &judge, const SpidFaultFound &fault);

} // namespace loopwright
