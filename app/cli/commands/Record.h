#pragma once
// `record`: the facts of a job record.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeRecord();

} // namespace loopwright
