#pragma once
// `order list`: the board.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderList();

} // namespace loopwright
