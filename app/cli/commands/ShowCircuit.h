#pragma once
// `circuit show`: all orders of a circuit and its events.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeShowCircuit();

} // namespace loopwright
