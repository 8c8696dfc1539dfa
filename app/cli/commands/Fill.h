#pragma once
// `fill`: invented records for trials.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeFill();

} // namespace loopwright
