#pragma once
// `circuit show`: all orders of a circuit and its events.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCircuitShow();

} // namespace loopwright
