#pragma once
// `--map`: how a file with columns of somebody else's is read.

#include "core/base/ColumnMap.h"

#include <optional>

namespace loopwright {

/// Nothing for no path. `file` is the one that is read by it.
Result<std::optional<ColumnMap>> readMapFile(const QString &path, const QString &file);

inline constexpr const char *mapHelp =
    "JSON that leads from the columns and values of the file to ours";

} // namespace loopwright
