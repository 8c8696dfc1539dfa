#include "app/print/PdfSeal.h"

#include "core/base/Json.h"

namespace loopwright {

namespace {

const QByteArray place = "startxref\n";
const QByteArray mark = "%Signature over all other bytes: ";

QByteArray signedText(const QByteArray &otherBytes)
{
    return "Loopwright certificate file\nsha256 " + sha256Hex(otherBytes).toLatin1() + '\n';
}

} // namespace

Result<QByteArray> sealedPdf(const QByteArray &pdf, const QString &key,
                             const std::function<QByteArray(const QByteArray &)> &sign)
{
    const qsizetype at = pdf.lastIndexOf(place);
    if (at < 0)
        return failure(ErrorCode::BadInput, "is no PDF: it has no \"startxref\"", "PDF");
    const QByteArray line = mark + key.toLatin1() + ' ' + sign(signedText(pdf)) + '\n';
    return pdf.first(at) + line + pdf.sliced(at);
}

std::optional<PdfSeal> sealOf(const QByteArray &pdf)
{
    const qsizetype end = pdf.lastIndexOf(place);
    const qsizetype at = end < 0 ? -1 : pdf.lastIndexOf(mark, end);
    if (at < 0)
        return std::nullopt;
    const QByteArray line = pdf.sliced(at, end - at);
    const QList<QByteArray> words = line.sliced(mark.size()).split(' ');
    if (words.size() != 2 || !words[1].endsWith('\n') || line.count('\n') != 1)
        return std::nullopt;
    return PdfSeal{QString::fromLatin1(words[0]), words[1].chopped(1),
                   signedText(pdf.first(at) + pdf.sliced(end))};
}

} // namespace loopwright
