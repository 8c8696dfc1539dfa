#pragma once
// `variants`: the protocol variants and what each of them needs.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeVariants();

} // namespace loopwright
