#pragma once
// `decide`: what the evidence says of an order, now or as it was decided before.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeDecide();

} // namespace loopwright
