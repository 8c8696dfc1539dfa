#include "app/desktop/PrintDialogs.h"

#include "app/actions/SheetFile.h"
#include "app/desktop/Keys.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QFileDialog>
#include <QPrintDialog>

#include <algorithm>
#include <clocale>
#include <cstring>
#include <langinfo.h>

namespace loopwright {

namespace {

std::optional<Paper> &chosenPaper()
{
    static std::optional<Paper> paper;
    return paper;
}

/// Of the paper, in mm, as LC_PAPER says; 0 where that is the one of programs, which is A4
/// anywhere.
int systemsHeight()
{
    const QByteArray locale(std::setlocale(LC_PAPER, nullptr));
    if (locale == "C" || locale == "POSIX" || locale.startsWith("C."))
        return 0;
    // glibc answers with a number in the place of the pointer.
    const char *answer = nl_langinfo(_NL_PAPER_HEIGHT);
    unsigned height = 0;
    static_assert(sizeof height <= sizeof answer);
    std::memcpy(&height, &answer, sizeof height);
    return int(height);
}

/// Which, counted from 0, and in which order. What a printer does by itself is left to it: copies,
/// and "Pages 1-3, 5", for which Qt's dialog lets all of them come.
std::vector<std::size_t> pagesToPrint(const QPrinter &printer, std::size_t count)
{
    std::size_t first = 1, last = count;
    if (printer.printRange() == QPrinter::PageRange && printer.toPage() > 0) {
        first = std::size_t(std::max(1, printer.fromPage()));
        last = std::min(count, std::size_t(printer.toPage()));
    }
    std::vector<std::size_t> once;
    for (std::size_t page = first; page <= last; ++page)
        once.push_back(page - 1);
    if (printer.pageOrder() == QPrinter::LastPageFirst)
        std::ranges::reverse(once);
    const std::size_t copies =
        printer.supportsMultipleCopies() ? 1 : std::size_t(std::max(1, printer.copyCount()));
    std::vector<std::size_t> pages;
    if (printer.collateCopies())
        for (std::size_t copy = 0; copy < copies; ++copy)
            pages.insert(pages.end(), once.begin(), once.end());
    else
        for (const std::size_t page : once)
            pages.insert(pages.end(), copies, page);
    return pages;
}

} // namespace

std::unique_ptr<QPrinter> choosePrinter(QWidget *parent, Paper proposed)
{
    auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
    printer->setPageSize(paperLayout(proposed).pageSize());
    QPrintDialog dialog(printer.get(), parent);
    return dialog.exec() == QDialog::Accepted ? std::move(printer) : nullptr;
}

Paper paperOf(const QPrinter &printer)
{
    return paperFor(printer.pageLayout().fullRectPoints().size());
}

QAction *offerPrint(QWidget *paper, QAbstractButton *button)
{
    return addKey(paper, {QStringLiteral("print.key"), button->text(), {}}, [button] {
        if (!button->isHidden())
            button->click();
    });
}

void printByKey(QWidget *paper, QAbstractButton *button)
{
    offerPrint(paper, button)->setShortcut(QKeySequence::Print);
}

bool printAtHand(const QWidget &page)
{
    const QList<QAction *> papers = page.findChildren<QAction *>(QStringLiteral("print.key"));
    if (papers.isEmpty())
        return false;
    const QWidget *focus = QApplication::focusWidget();
    const auto here = std::ranges::find_if(papers, [focus](const QAction *each) {
        const auto *paper = static_cast<const QWidget *>(each->parent());
        return focus && paper->isAncestorOf(focus);
    });
    (here == papers.end() ? papers.front() : *here)->trigger();
    return true;
}

Result<void> printOn(QPrinter &printer, const Sheet &sheet, const PageProgress &progress)
{
    printer.setDocName(sheet.title);
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setFullPage(true); // sheets have margins of their own
    return sheet.paintPages(printer, pagesToPrint(printer, sheet.pages.size()), progress);
}

Result<bool> printSheet(QWidget *parent, const SheetFor &sheetFor)
{
    const auto printer = choosePrinter(parent, localPaper());
    if (!printer)
        return false;
    LOOPWRIGHT_ASSIGN(const auto sheet, sheetFor(paperOf(*printer)));
    LOOPWRIGHT_TRY(printOn(*printer, sheet));
    return true;
}

QString choosePdf(QWidget *parent, const QString &suggestedName)
{
    return QFileDialog::getSaveFileName(
        parent, QCoreApplication::translate("PrintDialogs", "Save as PDF"), suggestedName,
        QCoreApplication::translate("PrintDialogs", "PDF files (*.pdf)"));
}

Result<QString> saveSheet(QWidget *parent, const Sheet &sheet, const QString &suggestedName,
                          const Moment &created)
{
    const QString path = choosePdf(parent, suggestedName);
    if (path.isEmpty())
        return QString();
    LOOPWRIGHT_TRY(writeSheet(sheet, path, created));
    return path;
}

void choosePaper(std::optional<Paper> paper)
{
    chosenPaper() = paper;
}

Paper localPaper()
{
    return chosenPaper().value_or(usualPaper(systemsHeight(), QLocale::system().territory()));
}

Paper usualPaper(int paperHeight, QLocale::Territory territory)
{
    constexpr int letterHeight = 279;
    constexpr QLocale::Territory letterLands[] = {QLocale::UnitedStates, QLocale::Canada,
                                                  QLocale::Mexico};
    const bool letter = paperHeight > 0
                            ? paperHeight == letterHeight
                            : std::ranges::find(letterLands, territory) != std::end(letterLands);
    return letter ? Paper::Letter : Paper::A4;
}

} // namespace loopwright
