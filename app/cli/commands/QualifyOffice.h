#pragma once
// `qualify office OFFICE`: every pair of a serving office with a make-up.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeQualifyOffice();

} // namespace loopwright
