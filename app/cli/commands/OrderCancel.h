#pragma once
// `order cancel`: what the order planned is released.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderCancel();

} // namespace loopwright
