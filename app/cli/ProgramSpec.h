#pragma once
// What the program can be told, as plain data: the commands of the register with what each
// declares. The manual and the shell's completion are made from it, and so cannot lag behind.

#include "app/cli/Options.h"

#include <vector>

namespace loopwright {

struct CommandSpec
{
    QString words; ///< "order import"
    QString summary;
    std::vector<OptionSpec> options;
};

struct ProgramSpec
{
    QString name;
    QString purpose;
    std::vector<OptionSpec> common; ///< may stand with every command
    std::vector<CommandSpec> commands;
};

} // namespace loopwright
