#pragma once
// What bash sources to complete the commands, their options and the words that these take.

#include "app/cli/ProgramSpec.h"

namespace loopwright {

/// Needs nothing but bash: a function for each question, and one that walks over what was typed.
QByteArray bashCompletionOf(const ProgramSpec &program);

} // namespace loopwright
