#pragma once
// A PIN from a file or from the terminal, never from the command's line, where others could read
// it.

#include "core/base/Result.h"

#include <optional>

namespace loopwright {

/// The first line of a file. BadInput if there is none.
Result<QString> pinFromFile(const QString &path);
/// Asks on the terminal without showing what is typed; nothing if no person is there.
std::optional<QString> pinFromTerminal(const QString &question);

} // namespace loopwright
