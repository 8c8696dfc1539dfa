#pragma once
// The page loopwright-cli(1).

#include "app/cli/ProgramSpec.h"

namespace loopwright {

inline constexpr const char *manualHelp =
    "Writes the manual page (man), or what completes the commands in bash (bash)";

/// In mdoc.
QByteArray manualOf(const ProgramSpec &program);

} // namespace loopwright
