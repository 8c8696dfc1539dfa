#pragma once
// `check cause`: what a Q.850 cause says and what to check first.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCheckCause();

} // namespace loopwright
