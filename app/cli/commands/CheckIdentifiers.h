#pragma once
// `check identifiers`: a list of SPIDs, row by row.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCheckIdentifiers();

} // namespace loopwright
