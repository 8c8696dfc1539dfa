#pragma once
// `instrument label KEY`: enters an instrument that the register does not know from its label.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeInstrumentLabel();

} // namespace loopwright
