#pragma once
// `export view`: every table as CSV.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeExportView();

} // namespace loopwright
