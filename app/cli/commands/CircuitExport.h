#pragma once
// `circuit export`: a circuit's whole file.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCircuitExport();

} // namespace loopwright
