#pragma once
// `accept`: acceptance with exception.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeAccept();

} // namespace loopwright
