#pragma once
// `export`: every table as CSV.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeExport();

} // namespace loopwright
