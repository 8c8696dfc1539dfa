#pragma once
// `day`: what an installer has to do on a day, on paper.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeDay();

} // namespace loopwright
