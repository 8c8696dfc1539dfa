#pragma once
// The register of the parts of the job page, in the order of the work. A new part is one file in
// panels/, one maker in panels/Panels.h and one row here.

#include "app/desktop/job/StationPanel.h"

#include <span>

namespace loopwright {

std::span<const PanelInfo> allPanels();

} // namespace loopwright
