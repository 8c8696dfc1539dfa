#pragma once
// With which status the command line ends; fixed by the contract of the program.

#include "core/base/Result.h"

#include <span>

namespace loopwright {

/// What each means stands in exitStatuses().
enum class ExitStatus
{
    Yes = 0,
    No = 1,
    Usage = 2,
    BadInput = 3,
    DatabaseTrouble = 4,
    DiskTrouble = 5,
    Interrupted = 130,
};

ExitStatus exitStatusOf(ErrorCode code);

struct ExitStatusMeaning
{
    ExitStatus status;
    const char *meaning;
};
/// All of them, for the manual.
std::span<const ExitStatusMeaning> exitStatuses();

} // namespace loopwright
