#pragma once
// A sheet to a printer or into a file. Both ask where to; neither asks twice.

#include "app/print/Sheet.h"
#include "core/base/Moment.h"

#include <QLocale>
#include <QPrinter>

#include <functional>
#include <memory>

class QAbstractButton;
class QAction;
class QWidget;

namespace loopwright {

/// Lays out what is printed, for a paper.
using SheetFor = std::function<Result<Sheet>(Paper paper)>;

/// Shows the system's print dialog, which proposes the paper; none where the person said no.
std::unique_ptr<QPrinter> choosePrinter(QWidget *parent, Paper proposed);
/// The paper to lay out for the page that was chosen for the printer.
Paper paperOf(const QPrinter &printer);
/// Prints the pages that were chosen, as often and in the order that was, on the page that was. It
/// stands upright in any case, for so does every paper. Refused where the sheet has none of these
/// pages, or it was stopped; DiskTrouble where the printer cannot be painted on.
Result<void> printOn(QPrinter &printer, const Sheet &sheet, const PageProgress &progress = {});
/// Asks for a printer, lays out for its page and prints. False where the person changed their mind.
Result<bool> printSheet(QWidget *parent, const SheetFor &sheetFor);
/// Asks for a PDF to write; empty where the person changed their mind.
QString choosePdf(QWidget *parent, const QString &suggestedName);
/// Asks for a file and writes a PDF. The path that was chosen; empty where the person changed their
/// mind.
Result<QString> saveSheet(QWidget *parent, const Sheet &sheet, const QString &suggestedName,
                          const Moment &created);
/// Ctrl+P anywhere in `paper`, where its sheet is at hand, clicks its button.
void printByKey(QWidget *paper, QAbstractButton *button);
/// The same without a key, for one of several papers of a page, which has the key.
QAction *offerPrint(QWidget *paper, QAbstractButton *button);
/// Prints what has the keyboard in it; else the first paper of the page. False where there is none.
bool printAtHand(const QWidget &page);
/// The paper that was chosen for this program; else the usual one here.
Paper localPaper();
/// By the height in mm of the system's paper (LC_PAPER); where that says none (0), Letter in the
/// countries that use it and A4 elsewhere.
Paper usualPaper(int paperHeight, QLocale::Territory territory);
/// From now on; nothing: the usual one.
void choosePaper(std::optional<Paper> paper);

} // namespace loopwright
