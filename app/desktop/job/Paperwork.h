#pragma once
// Sheets out of the job page: to a PDF that the person names, or to a printer.

#include "app/desktop/PaperOut.h"
#include "core/base/Moment.h"

#include <QPrinter>
#include <QWidget>

#include <memory>

namespace loopwright {

/// Where a document of this name is proposed: the person's documents folder.
QString proposedPath(const QString &fileName);
/// Writes it as a PDF, whole or not at all.
Result<void> saveSheet(const QString &path, const Sheet &sheet, const Moment &now);
Result<void> saveBytes(const QString &path, const QByteArray &bytes);

} // namespace loopwright
