#pragma once
// `analyse capture`: raw octets of a B channel against the test pattern.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeAnalyseCapture();

} // namespace loopwright
