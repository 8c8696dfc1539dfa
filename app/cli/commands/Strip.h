#pragma once
// `strip`: a run second by second as a picture.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeStrip();

} // namespace loopwright
