#pragma once
// `export view`: what the board shows, as CSV.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeExportView();

} // namespace loopwright
