#pragma once
// `order show`: one order with evidence, decision and events.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderShow();

} // namespace loopwright
