#pragma once
// `limits show`: the limits, each with unit and source. `limits add`: a set of the office's own.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeLimitsShow();
std::unique_ptr<Command> makeLimitsAdd();

} // namespace loopwright
