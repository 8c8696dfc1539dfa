#pragma once
// `order complete`: the planned identifiers become working.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderComplete();

} // namespace loopwright
