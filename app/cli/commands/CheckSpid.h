#pragma once
// `check spid`: one SPID judged and taken apart.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCheckSpid();

} // namespace loopwright
