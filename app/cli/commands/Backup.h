#pragma once
// `backup` and `restore`: a verified copy of the records, and back again.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeBackup();
std::unique_ptr<Command> makeRestore();

} // namespace loopwright
