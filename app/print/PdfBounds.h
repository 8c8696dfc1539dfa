#pragma once
// libqpdf unpacks cross-reference and object streams whole, and knows no bound: a file of one
// megabyte can make it fill two gigabytes. So what a file that is handed in would unpack to is
// looked at before it gets it.

#include <QByteArray>

#include <optional>

namespace loopwright {

/// Bytes of all streams together; a certificate has some 500 kB.
inline constexpr qsizetype mostUnpacked = 4'000'000;

/// False if the file has cross-reference streams, and unpacks to more or is packed in ways that
/// cannot be told. A file with a plain table of its objects makes libqpdf unpack nothing.
bool isModestPdf(const QByteArray &pdf);

/// Inflates what begins there (RFC 1950), whatever follows it. At most `most` bytes come out;
/// nothing if there are more, or if it is damaged.
std::optional<QByteArray> inflated(QByteArrayView packed, qsizetype most);

} // namespace loopwright
