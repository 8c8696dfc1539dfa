#pragma once
// Papers read back for tests: what a PDF says, in the order in which it is read.

#include "app/print/PdfFile.h"
#include "tests/support/Certificates.h"

#include <QTemporaryDir>
#include <QTest>

namespace loopwright::papers {

/// Set LOOPWRIGHT_KEEP_PAPERS to a folder to have each paper left there under its title, to be
/// looked at.
inline void keep(const QByteArray &pdf, const QString &name)
{
    const QString folder = qEnvironmentVariable("LOOPWRIGHT_KEEP_PAPERS");
    if (folder.isEmpty())
        return;
    QFile file(folder + '/' + QString(name).replace('/', '_') + ".pdf");
    if (file.open(QIODevice::WriteOnly))
        file.write(pdf);
}

inline QString textOfPdf(const QByteArray &pdf, const QStringList &options = {"-raw"})
{
    QTemporaryDir folder;
    QFile file(folder.filePath("paper.pdf"));
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        qFatal("the temporary folder cannot be written");
    file.close();
    return QString::fromUtf8(
               certificates::run("pdftotext", options + QStringList{file.fileName(), "-"}).text)
        .simplified();
}

inline QString textOf(const Sheet &sheet)
{
    PdfInfo info;
    info.title = sheet.title;
    const auto pdf = sheetPdf(sheet, info);
    if (!pdf)
        qFatal("%s", qPrintable(pdf.error().text()));
    keep(*pdf, QString::fromLatin1(QTest::currentTestFunction()) + '-' +
                   QString::fromLatin1(QTest::currentDataTag()));
    return textOfPdf(*pdf);
}

/// Every piece stands in the text, each behind the one before it; else the first that does not.
inline QString notInOrder(const QString &text, const QStringList &pieces)
{
    qsizetype from = 0;
    for (const QString &piece : pieces) {
        const qsizetype at = text.indexOf(piece, from);
        if (at < 0)
            return QString("\"%1\" is not behind the one before it in: %2").arg(piece, text);
        from = at;
    }
    return {};
}

#define VERIFY_IN_ORDER(text, ...)                                                                 \
    do {                                                                                           \
        const QString trouble = loopwright::papers::notInOrder(text, __VA_ARGS__);                 \
        QVERIFY2(trouble.isEmpty(), qPrintable(trouble));                                          \
    } while (false)

} // namespace loopwright::papers
