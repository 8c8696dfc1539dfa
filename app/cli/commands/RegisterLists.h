#pragma once
// `office list`, `installer list` and `instrument list`: who and what is registered.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOfficeList();
std::unique_ptr<Command> makeInstallerList();
std::unique_ptr<Command> makeInstrumentList();

} // namespace loopwright
