#pragma once
// A signature over all bytes of a PDF but itself. It stands as a comment before the last
// "startxref", where ISO 32000-1 7.2.3 allows one and no offset changes, so that readers of PDF
// pass it over; a program that saves the file anew loses it.

#include "core/base/Result.h"

#include <QByteArray>

#include <functional>
#include <optional>

namespace loopwright {

/// `sign` returns the signature of a text. BadInput if the file has no "startxref".
Result<QByteArray> sealedPdf(const QByteArray &pdf, const QString &key,
                             const std::function<QByteArray(const QByteArray &)> &sign);

struct PdfSeal
{
    QString key; ///< fingerprint
    QByteArray signature;
    QByteArray text; ///< what must have been signed
};
/// Nothing if the file bears no seal where it belongs.
std::optional<PdfSeal> sealOf(const QByteArray &pdf);

} // namespace loopwright
