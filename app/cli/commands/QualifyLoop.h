#pragma once
// `qualify loop`: whether a make-up is fit for a basic-rate line.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeQualifyLoop();

} // namespace loopwright
