#pragma once
// Sets, changes or removes the PIN of a person.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makePersonPin();

} // namespace loopwright
