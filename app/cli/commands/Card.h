#pragma once
// `card`: the settings to program into the terminal equipment, on paper.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCard();

} // namespace loopwright
