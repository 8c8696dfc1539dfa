#pragma once
// What the columns of an order are called where a person reads of them.

#include "core/base/Text.h"

namespace loopwright {

/// "Pair", "Terminal 1, Directory number"; the column as it is written if it has no other name.
Text nameOfColumn(const QString &column);

} // namespace loopwright
