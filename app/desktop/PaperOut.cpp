#include "app/desktop/PaperOut.h"

#include "app/desktop/Files.h"
#include "app/print/PdfFile.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>

#include <algorithm>

namespace loopwright {

Result<bool> printSheet(QWidget *parent, const Sheet &sheet)
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(sheet.title);
    printer.setPageLayout(paperLayout(sheet.paper));
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted)
        return false;
    LOOPWRIGHT_TRY(sheet.paint(printer));
    return true;
}

Result<QString> saveSheet(QWidget *parent, const Sheet &sheet, const QString &suggestedName,
                          const Moment &created)
{
    const QString path = QFileDialog::getSaveFileName(
        parent, QCoreApplication::translate("PaperOut", "Save as PDF"), suggestedName,
        QCoreApplication::translate("PaperOut", "PDF files (*.pdf)"));
    if (path.isEmpty())
        return QString();
    PdfInfo info;
    info.title = sheet.title;
    info.created = created;
    const auto pdf = sheetPdf(sheet, info);
    if (!pdf)
        return failure(pdf.error());
    LOOPWRIGHT_TRY(writeWholeFile(path, *pdf));
    return path;
}

Paper localPaper()
{
    constexpr QLocale::Territory letterLands[] = {QLocale::UnitedStates, QLocale::Canada,
                                                  QLocale::Mexico};
    const QLocale::Territory here = QLocale::system().territory();
    return std::ranges::find(letterLands, here) == std::end(letterLands) ? Paper::A4
                                                                         : Paper::Letter;
}

} // namespace loopwright
