#pragma once
// A sheet to a printer or into a file. Both ask where to; neither asks twice.

#include "app/print/Sheet.h"
#include "core/base/Moment.h"

class QWidget;

namespace loopwright {

/// Shows the system's print dialog and prints. False where the person changed their mind;
/// DiskTrouble where the printer cannot be painted on.
Result<bool> printSheet(QWidget *parent, const Sheet &sheet);
/// Asks for a file and writes a PDF. The path that was chosen; empty where the person changed their
/// mind.
Result<QString> saveSheet(QWidget *parent, const Sheet &sheet, const QString &suggestedName,
                          const Moment &created);
/// Letter where the person's country uses it, else A4.
Paper localPaper();

} // namespace loopwright
