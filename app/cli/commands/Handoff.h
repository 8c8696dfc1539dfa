#pragma once
// `handoff`: the page that hands on a job that is not accepted.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeHandoffCommand();

} // namespace loopwright
