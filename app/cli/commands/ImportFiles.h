#pragma once
// `order import`, `office import`, `installer import` and `instrument import`: files in. One class
// serves all four; each has its line in the register.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeImportOrders();
std::unique_ptr<Command> makeImportOffices();
std::unique_ptr<Command> makeImportInstallers();
std::unique_ptr<Command> makeImportInstruments();

} // namespace loopwright
