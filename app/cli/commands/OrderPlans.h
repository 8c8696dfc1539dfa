#pragma once
// order assign, order set, order hold and order resume: the desk's plans.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderAssign();
std::unique_ptr<Command> makeOrderSet();
std::unique_ptr<Command> makeOrderHold();
std::unique_ptr<Command> makeOrderResume();

} // namespace loopwright
