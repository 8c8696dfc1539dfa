#pragma once
// `audit`: identifiers over the whole database.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeAudit();

} // namespace loopwright
