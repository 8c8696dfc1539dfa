#pragma once
// A loop make-up from a file (loop.json, or CSV if the name says so), and the terminations of
// the command line.

#include "core/loop/LoopLoss.h"

namespace loopwright {

Result<LoopMakeup> readLoopFile(const QString &path);

/// "R" or "SOURCE,LOAD" in ohm, each above 0; empty is the usual 135 ohm at both ends.
Result<Terminations> terminationsFromText(const QString &text);

} // namespace loopwright
