#pragma once
// With which status the command line ends; fixed by the contract of the program.

#include "core/base/Result.h"

namespace loopwright {

enum class ExitStatus
{
    Yes = 0,             ///< done, and the answer is yes
    No = 1,              ///< done, and the answer is no; or refused
    Usage = 2,           ///< wrong usage
    BadInput = 3,        ///< an input cannot be read, is malformed, or is refused whole
    DatabaseTrouble = 4, ///< cannot be opened, is locked, damaged, or of a newer version
    DiskTrouble = 5,     ///< the disk refused a write
    Interrupted = 130,   ///< Ctrl-C or SIGTERM stopped long work; nothing is half done
};

ExitStatus exitStatusOf(ErrorCode code);

} // namespace loopwright
