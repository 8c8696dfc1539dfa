#pragma once
// `office list`, `installer list` and `instrument list`: who and what is registered.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeListOffices();
std::unique_ptr<Command> makeListInstallers();
std::unique_ptr<Command> makeListInstruments();

} // namespace loopwright
