#pragma once
// hazard list: every dangerous voltage that was read, and how it was closed.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeHazardList();

} // namespace loopwright
