#pragma once
// `order check-completion`: whether a completion number told by telephone is the order's.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderCheckCompletion();

} // namespace loopwright
