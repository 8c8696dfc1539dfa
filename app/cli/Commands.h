#pragma once
// The register of commands: one line each.

#include "app/cli/Command.h"

#include <span>

namespace loopwright {

std::span<const CommandEntry> allCommands();
/// What a first word stands for, if commands of several words begin with it.
QString groupSummary(const QString &firstWord);

} // namespace loopwright
