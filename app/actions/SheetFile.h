#pragma once
// A sheet as a PDF at a place that somebody named.

#include "app/print/Sheet.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"

namespace loopwright {

/// The document has the title of the sheet. As writeOut() (OutFile.h) fails, and if a page cannot
/// be painted.
Result<void> writeSheet(const Sheet &sheet, const QString &path, const Moment &made);

} // namespace loopwright
