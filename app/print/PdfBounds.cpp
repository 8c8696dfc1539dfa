#include "app/print/PdfBounds.h"

#include <QSet>

#include <algorithm>
#include <memory>
#include <zlib.h>

namespace loopwright {

namespace {

struct Inflation
{
    QByteArray bytes; ///< as many as came out
    bool whole = false;
    bool tooMuch = false;
};

Inflation inflate(QByteArrayView packed, qsizetype most)
{
    Inflation inflation;
    z_stream stream{};
    if (inflateInit(&stream) != Z_OK)
        return inflation;
    const std::unique_ptr<z_stream, decltype(&inflateEnd)> owner(&stream, &inflateEnd);
    stream.next_in = reinterpret_cast<Bytef *>(const_cast<char *>(packed.data()));
    stream.avail_in = uInt(packed.size());
    constexpr qsizetype piece = 1 << 16;
    int status = Z_OK;
    while (status == Z_OK && inflation.bytes.size() <= most) {
        const qsizetype before = inflation.bytes.size();
        inflation.bytes.resize(before + piece);
        stream.next_out = reinterpret_cast<Bytef *>(inflation.bytes.data() + before);
        stream.avail_out = uInt(piece);
        status = ::inflate(&stream, Z_NO_FLUSH);
        inflation.bytes.resize(before + piece - qsizetype(stream.avail_out));
    }
    inflation.whole = status == Z_STREAM_END;
    inflation.tooMuch = inflation.bytes.size() > most;
    return inflation;
}

bool isSpace(char c)
{
    return c == '\0' || c == '\t' || c == '\n' || c == '\f' || c == '\r' || c == ' ';
}

bool endsName(char c)
{
    return isSpace(c) || QByteArrayView("()<>[]{}/%").contains(c);
}

/// As it is meant: "/XR#65f" is "XRef" (ISO 32000-1 7.3.5).
QByteArray nameAt(QByteArrayView pdf, qsizetype at)
{
    constexpr qsizetype longest = 60; // none of those that are looked for is longer, escaped or not
    QByteArray name;
    for (; at < pdf.size() && !endsName(pdf[at]) && name.size() < longest; ++at) {
        const QByteArray code = pdf[at] == '#' && at + 2 < pdf.size()
                                    ? pdf.sliced(at + 1, 2).toByteArray()
                                    : QByteArray();
        bool isCode = false;
        const int character = code.toInt(&isCode, 16);
        name += isCode ? char(character) : pdf[at];
        at += isCode ? 2 : 0;
    }
    return name;
}

/// Those of `names` that stand anywhere in the file, also where it is packed.
QSet<QByteArray> namesIn(const QByteArray &pdf, const QSet<QByteArray> &names)
{
    QSet<QByteArray> found;
    for (qsizetype at = pdf.indexOf('/'); at >= 0; at = pdf.indexOf('/', at + 1))
        if (const QByteArray name = nameAt(pdf, at + 1); names.contains(name))
            found.insert(name);
    return found;
}

/// What all of it that can be inflated comes to, inflated again and again as far as that goes: a
/// stream may be packed more than once. Nothing if it is more than `most`.
std::optional<qsizetype> unpackedSize(QByteArrayView packed, qsizetype most, int depth = 0)
{
    constexpr int deepest = 4;
    if (depth == deepest)
        return std::nullopt;
    const Inflation once = inflate(packed, most);
    if (once.tooMuch)
        return std::nullopt;
    if (once.bytes.isEmpty())
        return 0;
    const auto again = unpackedSize(once.bytes, most - once.bytes.size(), depth + 1);
    return again ? std::optional(once.bytes.size() + *again) : std::nullopt;
}

} // namespace

std::optional<QByteArray> inflated(QByteArrayView packed, qsizetype most)
{
    Inflation inflation = inflate(packed, most);
    return inflation.whole && !inflation.tooMuch ? std::optional(std::move(inflation.bytes))
                                                 : std::nullopt;
}

bool isModestPdf(const QByteArray &pdf)
{
    if (namesIn(pdf, {"XRef"}).isEmpty())
        return true;
    // Filters that grow what they are given, and that are not looked into here.
    if (!namesIn(pdf, {"LZWDecode", "LZW", "RunLengthDecode", "RL", "ASCII85Decode", "A85",
                       "ASCIIHexDecode", "AHx", "Crypt"})
             .isEmpty())
        return false;
    const QByteArray keyword = "stream";
    qsizetype left = mostUnpacked;
    for (qsizetype at = pdf.indexOf(keyword); at >= 0; at = pdf.indexOf(keyword, at + 1)) {
        qsizetype begin = at + keyword.size();
        while (begin < pdf.size() && isSpace(pdf[begin]))
            ++begin;
        const auto size = unpackedSize(QByteArrayView(pdf).sliced(begin), left);
        if (!size)
            return false;
        left -= *size;
    }
    return true;
}

} // namespace loopwright
