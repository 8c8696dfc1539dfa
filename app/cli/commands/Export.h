#pragma once
// `export`: all records as the files of the imports, and every table as CSV.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeExport();

} // namespace loopwright
