#pragma once
// `history` shows what was done to an order; `history verify` recomputes every chain.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeHistory();

} // namespace loopwright
