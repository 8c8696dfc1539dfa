#pragma once
// `help schema`: the JSON Schema of a command's --json, or of a file that is read.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeHelpSchema();

} // namespace loopwright
