#pragma once
// A recorded fact in one line, as the installer would say it: "Safety card: 0 V ac tip to ground,
// …", "B1 data call out failed, cause 58". Says what was recorded, not what it means.

#include "core/acceptance/Fact.h"

namespace loopwright {

/// In English; lengths of a make-up in feet, or in metres.
QString factText(const Fact &fact, LineKind kind, bool inMetres = false);

} // namespace loopwright
