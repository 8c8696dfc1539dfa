#include "app/desktop/PrintDialogs.h"

#include "app/actions/SheetFile.h"
#include "app/desktop/Keys.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QFileDialog>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>

#include <algorithm>

namespace loopwright {

namespace {

std::optional<Paper> &chosenPaper()
{
    static std::optional<Paper> paper;
    return paper;
}

} // namespace

std::unique_ptr<QPrinter> choosePrinter(QWidget *parent, const QString &title, Paper paper)
{
    auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
    printer->setDocName(title);
    printer->setPageLayout(paperLayout(paper));
    QPrintDialog dialog(printer.get(), parent);
    return dialog.exec() == QDialog::Accepted ? std::move(printer) : nullptr;
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

Result<bool> printSheet(QWidget *parent, const Sheet &sheet)
{
    const auto printer = choosePrinter(parent, sheet.title, sheet.paper);
    if (!printer)
        return false;
    LOOPWRIGHT_TRY(sheet.paint(*printer));
    return true;
}

Result<QString> saveSheet(QWidget *parent, const Sheet &sheet, const QString &suggestedName,
                          const Moment &created)
{
    const QString path = QFileDialog::getSaveFileName(
        parent, QCoreApplication::translate("PrintDialogs", "Save as PDF"), suggestedName,
        QCoreApplication::translate("PrintDialogs", "PDF files (*.pdf)"));
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
    if (chosenPaper())
        return *chosenPaper();
    constexpr QLocale::Territory letterLands[] = {QLocale::UnitedStates, QLocale::Canada,
                                                  QLocale::Mexico};
    const QLocale::Territory here = QLocale::system().territory();
    return std::ranges::find(letterLands, here) == std::end(letterLands) ? Paper::A4
                                                                         : Paper::Letter;
}

} // namespace loopwright
