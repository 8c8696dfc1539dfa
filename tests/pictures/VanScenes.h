#pragma once

#include "tests/pictures/PictureDesk.h"

namespace loopwright {

/// The dialogs of vans; they change the records.
void vanDialogs(PictureDesk &desk);

} // namespace loopwright
