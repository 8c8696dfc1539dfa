#include "app/print/PdfFile.h"

#include "app/print/PdfBounds.h"

#include <QBuffer>
#include <QDateTime>
#include <QPdfWriter>
#include <qpdf/qpdf-c.h>

#include <algorithm>
#include <cstdlib>
#include <memory>
#include <optional>
#include <string_view>

namespace loopwright {

namespace {

// libqpdf is called through its C interface: it lets no exception out, and what went wrong stays
// with the file.
struct CloseQpdf
{
    void operator()(qpdf_data file) const
    {
        if (qpdf_has_error(file))
            qpdf_get_error(file); // else it is written to stderr as one that nobody heeded
        qpdf_cleanup(&file);
    }
};
using QpdfFile = std::unique_ptr<std::remove_pointer_t<qpdf_data>, CloseQpdf>;

enum class Repair
{
    No,
    Yes
};

/// The bytes must live as long as what is returned. Empty if they cannot be read as PDF.
QpdfFile opened(const QByteArray &pdf, Repair repair)
{
    QpdfFile file(qpdf_init());
    qpdf_set_suppress_warnings(file.get(), QPDF_TRUE);
    qpdf_silence_errors(file.get());
    qpdf_set_attempt_recovery(file.get(), repair == Repair::Yes ? QPDF_TRUE : QPDF_FALSE);
    if (qpdf_read_memory(file.get(), "PDF", pdf.constData(), std::size_t(pdf.size()), nullptr) &
        QPDF_ERRORS)
        return {};
    return file;
}

tl::unexpected<Error> notOurs(const QString &what)
{
    return failure(ErrorCode::BadInput, QString("is no PDF of Qt's writer: %1").arg(what), "PDF");
}

qpdf_oh textObject(qpdf_data file, const QString &text)
{
    return qpdf_oh_new_unicode_string(file, text.toUtf8().constData());
}

/// ISO 32000-1 7.9.4, in UTC.
QByteArray dateString(const Moment &moment)
{
    const QDateTime utc = QDateTime::fromMSecsSinceEpoch(moment.msUtc, Qt::UTC);
    return "D:" + utc.toString("yyyyMMddhhmmss").toLatin1() + "Z";
}

/// The same for catalogues and archives (ISO 16684-1): what stands in /Info, and the author.
QByteArray xmpOf(const PdfInfo &info)
{
    const QString when = QDateTime::fromMSecsSinceEpoch(info.created.msUtc, Qt::UTC)
                             .toString("yyyy-MM-ddThh:mm:ssZ");
    const auto one = [](const char *element, const QString &value) {
        return value.isEmpty() ? QString()
                               : QString("<%1>%2</%1>\n").arg(QLatin1StringView(element), value);
    };
    const auto alternative = [](const QString &text) {
        return QString("<rdf:Alt><rdf:li xml:lang=\"x-default\">%1</rdf:li></rdf:Alt>")
            .arg(text.toHtmlEscaped());
    };
    QString xmp = "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                  "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
                  "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">"
                  "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" "
                  "xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" "
                  "xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n";
    xmp += one("dc:format", "application/pdf") + one("dc:title", alternative(info.title));
    if (!info.subject.isEmpty())
        xmp += one("dc:description", alternative(info.subject));
    if (!info.author.isEmpty())
        xmp += QString("<dc:creator><rdf:Seq><rdf:li>%1</rdf:li></rdf:Seq></dc:creator>\n")
                   .arg(info.author.toHtmlEscaped());
    xmp += QString("<dc:language><rdf:Bag><rdf:li>%1</rdf:li></rdf:Bag></dc:language>\n")
               .arg(info.language.toHtmlEscaped());
    xmp += one("xmp:CreateDate", when) + one("xmp:CreatorTool", "Loopwright " LOOPWRIGHT_VERSION) +
           one("pdf:Producer", QString("Qt ") + qVersion());
    xmp += "</rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"r\"?>";
    return xmp.toUtf8();
}

void setMetadata(qpdf_data file, const PdfInfo &info)
{
    const QByteArray xmp = xmpOf(info);
    const qpdf_oh stream = qpdf_oh_new_stream(file);
    const qpdf_oh dictionary = qpdf_oh_get_dict(file, stream);
    qpdf_oh_replace_key(file, dictionary, "/Type", qpdf_oh_new_name(file, "/Metadata"));
    qpdf_oh_replace_key(file, dictionary, "/Subtype", qpdf_oh_new_name(file, "/XML"));
    qpdf_oh_replace_stream_data(
        file, stream, reinterpret_cast<const unsigned char *>(xmp.constData()),
        std::size_t(xmp.size()), qpdf_oh_new_null(file), qpdf_oh_new_null(file));
    qpdf_oh_replace_key(file, qpdf_get_root(file), "/Metadata", stream);
}

/// Says of each attached file that it is the data behind the document.
void setRelationships(qpdf_data file)
{
    const qpdf_oh root = qpdf_get_root(file);
    const qpdf_oh names = qpdf_oh_get_key_if_dict(
        file,
        qpdf_oh_get_key_if_dict(file, qpdf_oh_get_key_if_dict(file, root, "/Names"),
                                "/EmbeddedFiles"),
        "/Names");
    if (!qpdf_oh_is_array(file, names))
        return;
    const qpdf_oh all = qpdf_oh_new_array(file);
    // Name and file in turn.
    for (int i = 1; i < qpdf_oh_get_array_n_items(file, names); i += 2) {
        const qpdf_oh attached = qpdf_oh_get_array_item(file, names, i);
        qpdf_oh_replace_key(file, attached, "/AFRelationship", qpdf_oh_new_name(file, "/Data"));
        qpdf_oh_append_item(file, all, attached);
    }
    qpdf_oh_replace_key(file, root, "/AF", all);
}

void setInfo(qpdf_data file, const PdfInfo &info)
{
    const qpdf_oh catalog = qpdf_get_root(file);
    qpdf_oh_replace_key(file, catalog, "/Lang", textObject(file, info.language));
    qpdf_oh_replace_key(file, catalog, "/ViewerPreferences",
                        qpdf_oh_parse(file, "<< /DisplayDocTitle true >>"));

    const qpdf_oh about = qpdf_oh_new_dictionary(file);
    qpdf_oh_replace_key(file, about, "/Title", textObject(file, info.title));
    qpdf_oh_replace_key(file, about, "/Subject", textObject(file, info.subject));
    qpdf_oh_replace_key(file, about, "/Creator",
                        textObject(file, "Loopwright " LOOPWRIGHT_VERSION));
    qpdf_oh_replace_key(file, about, "/Producer", textObject(file, QString("Qt ") + qVersion()));
    qpdf_oh_replace_key(file, about, "/CreationDate",
                        qpdf_oh_new_string(file, dateString(info.created).constData()));

    const qpdf_oh trailer = qpdf_get_trailer(file);
    qpdf_oh_replace_key(file, trailer, "/Info", qpdf_make_indirect_object(file, about));
    qpdf_oh_remove_key(file, trailer,
                       "/ID"); // Qt's is random; the new one from what is written
    if (!info.author.isEmpty())
        qpdf_oh_replace_key(file, about, "/Author", textObject(file, info.author));
    setMetadata(file, info);
    setRelationships(file);
}

/// Empty if it could not be written.
QByteArray written(qpdf_data file)
{
    if (qpdf_init_write_memory(file) & QPDF_ERRORS)
        return {};
    qpdf_set_deterministic_ID(file, QPDF_TRUE);
    qpdf_set_object_stream_mode(file,
                                qpdf_o_disable); // so that the title stands in the bytes as it is
    qpdf_set_stream_data_mode(file, qpdf_s_preserve);
    if (qpdf_write(file) & QPDF_ERRORS)
        return {};
    return {reinterpret_cast<const char *>(qpdf_get_buffer(file)),
            qsizetype(qpdf_get_buffer_length(file))};
}

QString textUnder(qpdf_data file, qpdf_oh dictionary, const char *key)
{
    const qpdf_oh entry = qpdf_oh_get_key_if_dict(file, dictionary, key);
    return qpdf_oh_is_string(file, entry) ? QString::fromUtf8(qpdf_oh_get_utf8_value(file, entry))
                                          : QString();
}

/// Of a stream, packed as it is; empty if that cannot be done.
QByteArray streamBytes(qpdf_data file, qpdf_oh stream)
{
    unsigned char *bytes = nullptr;
    std::size_t size = 0;
    const auto status = qpdf_oh_get_stream_data(file, stream, qpdf_dl_none, nullptr, &bytes, &size);
    const std::unique_ptr<unsigned char, decltype(&std::free)> owner(bytes, &std::free);
    return status & QPDF_ERRORS
               ? QByteArray()
               : QByteArray(reinterpret_cast<const char *>(bytes), qsizetype(size));
}

bool isNothing(qpdf_data file, qpdf_oh entry)
{
    return qpdf_oh_is_null(file, entry) ||
           (qpdf_oh_is_array(file, entry) && qpdf_oh_get_array_n_items(file, entry) == 0);
}

/// Of a stream that is not packed, or by one filter that Qt's writer uses. Unpacked here and not by
/// libqpdf, which knows no bound: a few kilobytes can hold gigabytes.
std::optional<QByteArray> boundedBytes(qpdf_data file, qpdf_oh stream)
{
    const qpdf_oh about = qpdf_oh_get_dict(file, stream);
    qpdf_oh filter = qpdf_oh_get_key(file, about, "/Filter");
    if (qpdf_oh_is_array(file, filter) && qpdf_oh_get_array_n_items(file, filter) == 1)
        filter = qpdf_oh_get_array_item(file, filter, 0);
    const bool plain = isNothing(file, filter);
    const bool deflated = qpdf_oh_is_name(file, filter) &&
                          qpdf_oh_get_name(file, filter) == std::string_view("/FlateDecode") &&
                          isNothing(file, qpdf_oh_get_key(file, about, "/DecodeParms"));
    if (!plain && !deflated)
        return std::nullopt;
    const QByteArray stored = streamBytes(file, stream);
    if (stored.size() > largestAttachment)
        return std::nullopt;
    return plain ? std::optional(stored) : inflated(stored, largestAttachment);
}

/// Reads the catalog's tree of attachments by name, ISO 32000-1 7.9.6.
class Attachments
{
public:
    explicit Attachments(qpdf_data file)
        : m_file(file)
    {
        const qpdf_oh names = qpdf_oh_get_key_if_dict(file, qpdf_get_root(file), "/Names");
        readNode(qpdf_oh_get_key_if_dict(file, names, "/EmbeddedFiles"), 0);
    }
    std::vector<PdfAttachment> take() { return std::move(m_found); }

private:
    static constexpr int deepest = 8, mostNodes = 100;
    static constexpr std::size_t mostAttachments = 10;

    void readNode(qpdf_oh node, int depth)
    {
        if (depth > deepest || ++m_nodes > mostNodes)
            return;
        const qpdf_oh names = qpdf_oh_get_key_if_dict(m_file, node, "/Names");
        // Name and file in turn.
        const int count = qpdf_oh_is_array(m_file, names) ? countOf(names) : 0;
        for (int i = 0; i + 1 < count && m_found.size() < mostAttachments; i += 2)
            readFile(qpdf_oh_get_array_item(m_file, names, i),
                     qpdf_oh_get_array_item(m_file, names, i + 1));
        const qpdf_oh kids = qpdf_oh_get_key_if_dict(m_file, node, "/Kids");
        const int below = qpdf_oh_is_array(m_file, kids) ? countOf(kids) : 0;
        for (int i = 0; i < below && m_nodes < mostNodes; ++i)
            readNode(qpdf_oh_get_array_item(m_file, kids, i), depth + 1);
    }

    void readFile(qpdf_oh name, qpdf_oh described)
    {
        const qpdf_oh files = qpdf_oh_get_key_if_dict(m_file, described, "/EF");
        const qpdf_oh stream = qpdf_oh_get_key_if_dict(m_file, files, "/F");
        if (!qpdf_oh_is_string(m_file, name) || !qpdf_oh_is_stream(m_file, stream))
            return;
        if (auto bytes = boundedBytes(m_file, stream))
            m_found.push_back(
                {QString::fromUtf8(qpdf_oh_get_utf8_value(m_file, name)), std::move(*bytes), {}});
    }

    int countOf(qpdf_oh array) const { return qpdf_oh_get_array_n_items(m_file, array); }

    qpdf_data m_file;
    int m_nodes = 0;
    std::vector<PdfAttachment> m_found;
};

} // namespace

Result<QByteArray> withPdfInfo(const QByteArray &pdf, const PdfInfo &info)
{
    // Qt has just written it: there is nothing to repair.
    const QpdfFile file = opened(pdf, Repair::No);
    if (!file)
        return notOurs("it cannot be read");
    setInfo(file.get(), info);
    const QByteArray bytes = written(file.get());
    if (qpdf_has_error(file.get()))
        return notOurs(qpdf_get_error_full_text(file.get(), qpdf_get_error(file.get())));
    return bytes;
}

Result<QByteArray> sheetPdf(const Sheet &sheet, const PdfInfo &info, const PageProgress &progress)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_6);
        writer.setResolution(int(unitsPerInch));
        writer.setTitle(info.title);
        std::vector<PdfAttachment> sorted = info.attachments; // as a tree of names must be
        std::ranges::sort(sorted, {}, &PdfAttachment::name);
        for (const PdfAttachment &attachment : sorted)
            writer.addFileAttachment(attachment.name, attachment.bytes, attachment.mimeType);
        const auto painted = sheet.paint(writer, progress);
        if (!painted && painted.error().code == ErrorCode::Refused)
            return failure(ErrorCode::Refused, "It was stopped; nothing was written.");
        LOOPWRIGHT_TRY(painted);
    }
    return withPdfInfo(bytes, info);
}

PdfContents readPdf(const QByteArray &pdf)
{
    if (!isModestPdf(pdf))
        return {};
    const QpdfFile file = opened(pdf, Repair::Yes);
    if (!file)
        return {};
    // What fails from here on is left empty or out.
    const qpdf_oh info = qpdf_oh_get_key(file.get(), qpdf_get_trailer(file.get()), "/Info");
    return {textUnder(file.get(), info, "/Title"), textUnder(file.get(), info, "/Subject"),
            Attachments(file.get()).take()};
}

QByteArray PdfContents::attachment(const QString &name) const
{
    const auto isIt = [&name](const PdfAttachment &each) { return each.name == name; };
    return std::ranges::count_if(attachments, isIt) == 1
               ? std::ranges::find_if(attachments, isIt)->bytes
               : QByteArray();
}

} // namespace loopwright
