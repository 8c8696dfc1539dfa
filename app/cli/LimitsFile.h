#pragma once
// A limit set from a file, as `limits show --json` prints it.

#include "core/base/LimitSet.h"

namespace loopwright {

/// Fails as LimitSet::fromJson does, and if the file cannot be read.
Result<LimitSet> readLimitsFile(const QString &path);
/// The set in this file, or the newest that the program brings along if none is named: for
/// questions that are asked without records.
Result<LimitSet> limitsToJudgeBy(const QString &path);

} // namespace loopwright
