#pragma once
// A sheet as a PDF at a place that somebody named.

#include "app/print/Sheet.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"

namespace loopwright {

/// The document has the title of the sheet. As writeOut() (OutFile.h) fails, if a page cannot be
/// painted, and if it was stopped: then nothing is written. `progress` counts pages.
Result<void> writeSheet(const Sheet &sheet, const QString &path, const Moment &made,
                        const PageProgress &progress = {});

} // namespace loopwright
