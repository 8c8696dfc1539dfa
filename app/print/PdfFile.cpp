#include "app/print/PdfFile.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QDateTime>
#include <QPdfWriter>

#include <algorithm>
#include <charconv>

namespace loopwright {

namespace {

/// Where the objects of a file of Qt's writer begin, and which are document information and
/// catalog.
struct ObjectTable
{
    std::vector<qsizetype> offsets; ///< by object number; that of number 0 is 0
    qsizetype end = 0;              ///< where the table itself begins
    int info = 0;
    int root = 0;
};

constexpr qsizetype entryLength = 20; ///< of an entry in the table, in bytes

std::optional<qsizetype> numberAfter(const QByteArray &pdf, QByteArrayView word, qsizetype from)
{
    const qsizetype at = pdf.indexOf(word, from);
    if (at < 0)
        return std::nullopt;
    const char *begin = pdf.constData() + at + word.size();
    const char *end = pdf.constData() + pdf.size();
    while (begin < end && (*begin == ' ' || *begin == '\n' || *begin == '\r'))
        ++begin;
    qsizetype value = 0;
    return std::from_chars(begin, end, value).ec == std::errc() ? std::optional(value)
                                                                : std::nullopt;
}

tl::unexpected<Error> notOurs(const char *what)
{
    return failure(ErrorCode::BadInput,
                   QString("is not a PDF of this program's writer: %1").arg(what), "PDF");
}

/// Reads a table of one section: "xref", "0 N", then N lines of twenty bytes.
Result<ObjectTable> readTable(const QByteArray &pdf)
{
    ObjectTable table;
    table.end = pdf.lastIndexOf("\nxref\n") + 1;
    const auto count = numberAfter(pdf, "xref\n0 ", table.end);
    const auto info = numberAfter(pdf, "/Info ", table.end);
    const auto root = numberAfter(pdf, "/Root ", table.end);
    if (table.end == 0 || !count || !info || !root)
        return notOurs("its table of objects is missing");
    if (*count < 2 || *count > (pdf.size() - table.end) / entryLength)
        return notOurs("its table of objects is cut");
    if (*info < 1 || *info >= *count || *root < 1 || *root >= *count)
        return notOurs("its table of objects does not name its catalog");
    table.info = int(*info);
    table.root = int(*root);
    qsizetype at = pdf.indexOf('\n', table.end + 5) + 1;
    for (qsizetype i = 0; i < *count; ++i, at += entryLength) {
        if (at + entryLength > pdf.size())
            return notOurs("its table of objects is cut");
        const bool used = pdf[at + 17] == 'n';
        const qsizetype offset = used ? pdf.sliced(at, 10).toLongLong() : 0;
        if (used != (i > 0) || (used && (offset <= 0 || offset >= table.end)))
            return notOurs("its table of objects does not fit");
        table.offsets.push_back(offset);
    }
    return table;
}

/// The bytes of an object, from "N 0 obj" to where the next one begins.
QByteArray objectBytes(const QByteArray &pdf, const ObjectTable &table, qsizetype offset)
{
    qsizetype next = table.end;
    for (const qsizetype other : table.offsets)
        if (other > offset)
            next = std::min(next, other);
    return pdf.sliced(offset, next - offset);
}

/// A text string in UTF-16 with its mark, in hexadecimal (ISO 32000-1 7.9.2.2).
QByteArray textString(const QString &text)
{
    QByteArray bytes("\xFE\xFF", 2);
    for (const QChar c : text) {
        bytes += char(c.unicode() >> 8);
        bytes += char(c.unicode() & 0xff);
    }
    return '<' + bytes.toHex() + '>';
}

/// ISO 32000-1 7.9.4, in UTC.
QByteArray dateString(const Moment &moment)
{
    const QDateTime utc = QDateTime::fromMSecsSinceEpoch(moment.msUtc, Qt::UTC);
    return "(D:" + utc.toString("yyyyMMddhhmmss").toLatin1() + "Z)";
}

QByteArray infoObject(int number, const PdfInfo &info)
{
    return QByteArray::number(number) + " 0 obj\n<<\n/Title " + textString(info.title) +
           "\n/Subject " + textString(info.subject) + "\n/Creator " +
           textString("Loopwright " LOOPWRIGHT_VERSION) + "\n/Producer " +
           textString(QString("Qt ") + qVersion()) + "\n/CreationDate " + dateString(info.created) +
           "\n>>\nendobj\n";
}

Result<QByteArray> catalogObject(const QByteArray &catalog, const PdfInfo &info)
{
    const QByteArray type = "/Type /Catalog";
    const qsizetype at = catalog.indexOf(type);
    if (at < 0 || catalog.contains("/Lang"))
        return notOurs("its catalog is not as expected");
    QByteArray changed = catalog;
    changed.insert(at + type.size(), "\n/Lang (" + info.language.toLatin1() +
                                         ")\n/ViewerPreferences << /DisplayDocTitle true >>");
    return changed;
}

QByteArray tableEntry(qsizetype offset)
{
    return QByteArray::number(offset).rightJustified(10, '0') + " 00000 n \n";
}

} // namespace

Result<QByteArray> withPdfInfo(const QByteArray &pdf, const PdfInfo &info)
{
    const auto table = readTable(pdf);
    LOOPWRIGHT_TRY(table);
    const qsizetype header =
        *std::min_element(table->offsets.begin() + 1, table->offsets.end()); // 0 is the free one
    QByteArray out = pdf.first(header);
    QByteArray xref = "xref\n0 " + QByteArray::number(qsizetype(table->offsets.size())) +
                      "\n0000000000 65535 f \n";
    for (int number = 1; number < int(table->offsets.size()); ++number) {
        xref += tableEntry(out.size());
        const QByteArray object = objectBytes(pdf, *table, table->offsets[std::size_t(number)]);
        if (number == table->info) {
            out += infoObject(number, info);
        } else if (number == table->root) {
            const auto catalog = catalogObject(object, info);
            LOOPWRIGHT_TRY(catalog);
            out += *catalog;
        } else {
            out += object;
        }
    }
    const QByteArray id = QCryptographicHash::hash(out, QCryptographicHash::Sha256).first(16);
    const QByteArray hex = '<' + id.toHex() + '>';
    const QByteArray start = QByteArray::number(out.size());
    return QByteArray(out + xref + "trailer\n<<\n/Size " +
                      QByteArray::number(qsizetype(table->offsets.size())) + "\n/Info " +
                      QByteArray::number(table->info) + " 0 R\n/Root " +
                      QByteArray::number(table->root) + " 0 R\n/ID [" + hex + ' ' + hex +
                      "]\n>>\nstartxref\n" + start + "\n%%EOF\n");
}

Result<QByteArray> sheetPdf(const Sheet &sheet, const PdfInfo &info)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_6);
        writer.setResolution(int(unitsPerInch));
        writer.setTitle(info.title);
        for (const PdfAttachment &attachment : info.attachments)
            writer.addFileAttachment(attachment.name, attachment.bytes, attachment.mimeType);
        LOOPWRIGHT_TRY(sheet.paint(writer));
    }
    return withPdfInfo(bytes, info);
}

} // namespace loopwright
