#pragma once
// `limits`: the limits, each with unit and source.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeListLimits();

} // namespace loopwright
