#pragma once
// `analyse seconds`: a run second by second, evaluated by the G.821 method.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeAnalyseSeconds();

} // namespace loopwright
