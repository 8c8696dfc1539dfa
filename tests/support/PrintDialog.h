#pragma once
// Answers the system's print dialog in tests: what a person chooses there is set on its printer,
// which writes a PDF instead of paper.

#include "tests/support/Certificates.h"

#include <QApplication>
#include <QPrintDialog>
#include <QPrinter>
#include <QTimer>

#include <functional>

namespace loopwright::printing {

inline void intoFile(QPrinter &printer, const QString &path)
{
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
}

/// The next dialog, which comes while the caller waits for its end, is agreed to: what is printed
/// is in `path`.
inline void agree(const QString &path, const std::function<void(QPrinter &)> &choose)
{
    QTimer::singleShot(0, qApp, [path, choose] {
        auto *dialog = qobject_cast<QPrintDialog *>(QApplication::activeModalWidget());
        if (!dialog)
            qFatal("no print dialog came");
        intoFile(*dialog->printer(), path);
        choose(*dialog->printer());
        dialog->done(QDialog::Accepted); // and not its button, which reads its fields once more
    });
}

/// Another page than the usual one.
inline void letterOnItsSide(QPrinter &printer)
{
    printer.setPageSize(QPageSize(QPageSize::Letter));
    printer.setPageOrientation(QPageLayout::Landscape);
}

/// "2 pages, 612 x 792 pts (letter)"
inline QString pagesOf(const QString &path)
{
    const QString info = QString::fromUtf8(certificates::run("pdfinfo", {path}).text);
    const auto value = [&info](const QString &name) {
        return info.section(name + ':', 1).section('\n', 0, 0).trimmed();
    };
    return value("Pages") + " pages, " + value("Page size");
}

} // namespace loopwright::printing
