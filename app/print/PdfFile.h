#pragma once
// A sheet as PDF bytes. Qt 6.4 writes no document language and takes its date from the clock, so
// the file it makes is written anew with those two set: every object is copied as it is, the
// catalog gets /Lang and asks viewers to show the title, the document information is ours, and the
// table of objects is made again.

#include "app/print/Sheet.h"
#include "core/base/Moment.h"

namespace loopwright {

struct PdfAttachment
{
    QString name; ///< "record.json"
    QByteArray bytes;
    QString mimeType;
};

struct PdfInfo
{
    QString title;
    QString subject = {};
    Moment created;
    QString language = "en"; ///< BCP 47
    std::vector<PdfAttachment> attachments = {};
};

/// Fonts embedded as subsets; text can be taken out. DiskTrouble where Qt's writer fails.
Result<QByteArray> sheetPdf(const Sheet &sheet, const PdfInfo &info);

/// Sets language, title, subject and date in a file of Qt's writer. BadInput where it is not such a
/// file.
Result<QByteArray> withPdfInfo(const QByteArray &pdf, const PdfInfo &info);

} // namespace loopwright
