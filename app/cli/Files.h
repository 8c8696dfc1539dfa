#pragma once
// Files as a command line names them; they are read by app/actions/InFile.h and written by
// OutFile.h.

#include "app/actions/InFile.h"

namespace loopwright {

/// Usage if both name the same file, by whatever way: what is read must not be written over.
Result<void> checkNotInput(const QString &out, const QString &in);

/// Usage if it is `-`; `what` says why it cannot be.
Result<void> checkNotStandardStream(const QString &path, const QString &what);

} // namespace loopwright
