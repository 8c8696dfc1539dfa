#pragma once
// trouble open, trouble close, trouble list.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeTroubleOpen();
std::unique_ptr<Command> makeTroubleClose();
std::unique_ptr<Command> makeTroubleList();

} // namespace loopwright
