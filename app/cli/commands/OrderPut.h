#pragma once
// `order put`: takes one order in, or changes it, from its fields on the command line.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderPut();

} // namespace loopwright
