#pragma once
// `analyse bound`: what a count of bit errors proves about the true ratio.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeAnalyseBound();

} // namespace loopwright
