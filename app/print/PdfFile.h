#pragma once
// A sheet as PDF bytes, and what can be read from a PDF that somebody hands in. Qt 6.4 writes no
// document language and takes its date and its identifier from the clock and at random, so libqpdf
// sets them in the file that Qt made. The same sheet gives the same bytes.
//
// Of what an archive or a screen reader asks for, this is there: title, language, text in reading
// order with embedded fonts, XMP metadata, and each attachment with its relationship to the page
// (/AFRelationship /Data). What is not: tags. Qt 6.4 writes no structure tree, so a screen reader
// is led by the order of the text alone, and the file claims neither PDF/UA nor PDF/A.

#include "app/print/PaperLanguage.h"
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
    QString language = paperLanguage().code;
    std::vector<PdfAttachment> attachments = {};
    QString author = {};
};

/// Fonts embedded as subsets; text can be taken out. DiskTrouble if Qt's writer fails, Refused if
/// it was stopped.
Result<QByteArray> sheetPdf(const Sheet &sheet, const PdfInfo &info,
                            const PageProgress &progress = {});

/// Sets language, title, subject and date in a file of Qt's writer; its attachments stay as they
/// are. BadInput if it is no such file or is damaged.
Result<QByteArray> withPdfInfo(const QByteArray &pdf, const PdfInfo &info);

struct PdfContents
{
    QString title, subject;
    /// By the catalog's tree of names, which readers of PDF go by: up to ten, each up to
    /// largestAttachment. Their kinds are not read.
    std::vector<PdfAttachment> attachments;

    /// Empty if there is none of this name, or more than one: what a reader shows would be chance.
    QByteArray attachment(const QString &name) const;
};
/// Bytes, unpacked. Those of a certificate have some ten thousand.
inline constexpr qsizetype largestAttachment = 1'000'000;

/// Of any file, damaged ones too: what cannot be read, or would unpack to too much (PdfBounds.h),
/// is left empty or out.
PdfContents readPdf(const QByteArray &pdf);

} // namespace loopwright
