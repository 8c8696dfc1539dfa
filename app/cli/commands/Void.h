#pragma once
// `void`: a fact that no longer counts.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeVoid();

} // namespace loopwright
