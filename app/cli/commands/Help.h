#pragma once
// `help station`, `help glossary`, `help columns`: what the window says beside its stations, its
// words, and the columns of the files that are read.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeHelpStation();
std::unique_ptr<Command> makeHelpGlossary();
std::unique_ptr<Command> makeHelpColumns();

} // namespace loopwright
