#pragma once
// `order import`, `office import`, `installer import` and `instrument import`: files in. One class
// serves all four; each has its line in the register.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeOrderImport();
std::unique_ptr<Command> makeOfficeImport();
std::unique_ptr<Command> makeIssuerImport();
std::unique_ptr<Command> makeInstallerImport();
std::unique_ptr<Command> makeInstrumentImport();

} // namespace loopwright
