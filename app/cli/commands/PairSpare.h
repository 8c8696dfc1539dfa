#pragma once
// `pair spare ORDER`: the pairs of the order's cable that nobody has, the best first.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makePairSpare();

} // namespace loopwright
