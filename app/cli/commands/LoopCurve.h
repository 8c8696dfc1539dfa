#pragma once
// `loop curve`: the loss of a make-up over frequency.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeLoopCurve();

} // namespace loopwright
