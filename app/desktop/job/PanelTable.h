#pragma once
// The register of the parts of the job page, in the order of the groups of steps: title, and the
// editors where a form for each step is not enough. A new part is one row here.

#include "app/desktop/job/StationPanel.h"

#include <span>

namespace loopwright {

std::span<const PanelInfo> allPanels();

} // namespace loopwright
