#pragma once
// report: figures over all orders, the orders behind them, and both as files.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeReportCommand();

} // namespace loopwright
