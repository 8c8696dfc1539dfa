#include "app/print/PdfFile.h"

#include <QBuffer>
#include <QDateTime>
#include <QPdfWriter>
#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <algorithm>
#include <stdexcept>

namespace loopwright {

namespace {

constexpr qsizetype mostUnpacked = 4'000'000; ///< bytes of all attachments; ours are far smaller

/// False if libqpdf gave up: its exceptions, and what it throws of the standard library's, end
/// here.
template<typename Work>
bool managed(const Work &work)
{
    try {
        work();
        return true;
    } catch (const std::exception &) {
        return false;
    }
}

/// The bytes must live as long as the file that is read from them.
void open(QPDF &file, const QByteArray &pdf)
{
    file.setSuppressWarnings(true);
    file.processMemoryFile("PDF", pdf.constData(), std::size_t(pdf.size()));
}

QPDFObjectHandle textObject(const QString &text)
{
    return QPDFObjectHandle::newUnicodeString(text.toStdString());
}

/// ISO 32000-1 7.9.4, in UTC.
std::string dateString(const Moment &moment)
{
    const QDateTime utc = QDateTime::fromMSecsSinceEpoch(moment.msUtc, Qt::UTC);
    return "D:" + utc.toString("yyyyMMddhhmmss").toStdString() + "Z";
}

void setInfo(QPDF &file, const PdfInfo &info)
{
    QPDFObjectHandle catalog = file.getRoot();
    catalog.replaceKey("/Lang", QPDFObjectHandle::newString(info.language.toStdString()));
    catalog.replaceKey("/ViewerPreferences",
                       QPDFObjectHandle::parse("<< /DisplayDocTitle true >>"));

    QPDFObjectHandle about = QPDFObjectHandle::newDictionary();
    about.replaceKey("/Title", textObject(info.title));
    about.replaceKey("/Subject", textObject(info.subject));
    about.replaceKey("/Creator", textObject("Loopwright " LOOPWRIGHT_VERSION));
    about.replaceKey("/Producer", textObject(QString("Qt ") + qVersion()));
    about.replaceKey("/CreationDate", QPDFObjectHandle::newString(dateString(info.created)));

    QPDFObjectHandle trailer = file.getTrailer();
    trailer.replaceKey("/Info", file.makeIndirectObject(about));
    trailer.removeKey("/ID"); // Qt's comes from chance; the new one from what is written
}

QByteArray written(QPDF &file)
{
    QPDFWriter writer(file);
    writer.setOutputMemory();
    writer.setDeterministicID(true);
    writer.setObjectStreamMode(qpdf_o_disable); // the number in the title stays readable as it is
    writer.setStreamDataMode(qpdf_s_preserve);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char *>(buffer->getBuffer()), qsizetype(buffer->getSize())};
}

/// Takes what a stream unpacks to, and no more than `most` of it.
class CappedBytes : public Pipeline
{
public:
    explicit CappedBytes(qsizetype most)
        : Pipeline("capped bytes", nullptr)
        , m_most(most)
    {
    }

    void write(const unsigned char *data, std::size_t length) override
    {
        const qsizetype taken = std::min(qsizetype(length), m_most - bytes.size());
        bytes.append(reinterpret_cast<const char *>(data), taken);
        if (taken < qsizetype(length))
            throw std::length_error("the attachment is too large");
    }
    void finish() override {}

    QByteArray bytes;

private:
    qsizetype m_most;
};

QString entryText(QPDFObjectHandle dictionary, const char *key)
{
    QPDFObjectHandle entry = dictionary.getKey(key);
    return entry.isString() ? QString::fromStdString(entry.getUTF8Value()) : QString();
}

} // namespace

Result<QByteArray> withPdfInfo(const QByteArray &pdf, const PdfInfo &info)
{
    try {
        QPDF file;
        file.setAttemptRecovery(false); // Qt has just written it: there is nothing to make up for
        open(file, pdf);
        setInfo(file, info);
        return written(file);
    } catch (const std::exception &trouble) {
        return failure(ErrorCode::BadInput,
                       QString("is no PDF of Qt's writer: %1").arg(QString(trouble.what())), "PDF");
    }
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

PdfContents readPdf(const QByteArray &pdf)
{
    PdfContents contents;
    QPDF file;
    if (!managed([&] { open(file, pdf); }))
        return contents;
    // Apart, so that damage to the one leaves the other to be read.
    managed([&] {
        QPDFObjectHandle info = file.getTrailer().getKey("/Info");
        if (!info.isDictionary())
            return;
        contents.title = entryText(info, "/Title");
        contents.subject = entryText(info, "/Subject");
    });
    managed([&] {
        qsizetype left = mostUnpacked;
        for (const auto &named : QPDFEmbeddedFileDocumentHelper(file).getEmbeddedFiles()) {
            CappedBytes unpacked(left);
            managed([&] {
                named.second->getEmbeddedFileStream().pipeStreamData(&unpacked, 0,
                                                                     qpdf_dl_generalized, true);
            });
            left -= unpacked.bytes.size();
            contents.attachments.push_back(unpacked.bytes);
        }
    });
    return contents;
}

} // namespace loopwright
