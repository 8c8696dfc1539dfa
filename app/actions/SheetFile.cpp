#include "app/actions/SheetFile.h"

#include "app/actions/OutFile.h"
#include "app/print/PdfFile.h"

namespace loopwright {

Result<void> writeSheet(const Sheet &sheet, const QString &path, const Moment &made,
                        const PageProgress &progress)
{
    LOOPWRIGHT_ASSIGN(const auto pdf, sheetPdf(sheet, {sheet.title, {}, made}, progress));
    return writeOut(path, FileKind::Pdf, pdf);
}

} // namespace loopwright
