#pragma once
// van conflicts, settle: what stations say otherwise.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeVanConflicts();
std::unique_ptr<Command> makeVanSettle();

} // namespace loopwright
