#pragma once
// Looks for the one repair of a SPID. Candidates are tried under the same rules; a repair is
// offered only if exactly one of them is ok, and it never changes the verdict of what was typed.

#include "core/identifiers/SpidRules.h"

#include <string>

namespace loopwright {

struct SpidDiagnosis
{
    std::vector<SpidFaultFound> faults; ///< worst first
    std::string repair;                 ///< digits; belongs to the first fault; mostly empty
};

/// The faults of a judgement, with troubles that were recognised in place of what they explain.
SpidDiagnosis diagnose(const SpidJudge &judge);
/// False if diagnose() has nothing to say, which is quickly seen.
bool needsDiagnosis(const SpidJudge &judge);

} // namespace loopwright
