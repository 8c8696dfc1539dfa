#pragma once
// The number of a certificate, YY-SSS-NNNNN-CC: year, station of the database that issued it,
// sequence, and two check digits by ISO/IEC 7064 MOD 97-10 over the ten digits before them, so that
// a digit misread or two exchanged are noticed. Beside it the short code: the first twelve
// hexadecimal digits of the content's SHA-256, which can be typed from paper.

#include "core/base/Result.h"

#include <optional>

namespace loopwright {

/// Check digits by ISO/IEC 7064 MOD 97-10 (simplified procedure of its clause 8.4): "44" for "794".
/// `digits` holds ASCII digits only and is not empty; else nothing.
std::optional<QString> mod97CheckDigits(QStringView digits);

struct CertificateNumber
{
    int year = 2000;  ///< 2000 to 2099
    int station = 0;  ///< 0 to 999, of the database
    int sequence = 1; ///< 1 to mostSequence, within year and station

    static constexpr int mostSequence = 99999;

    /// "26-007-00042-18".
    QString text() const;

    /// Reads a number as typed: hyphens, spaces or neither. BadInput if the form is wrong, a
    /// field is out of range, or the check digits do not fit.
    static Result<CertificateNumber> parse(const QString &typed);

    bool operator==(const CertificateNumber &) const = default;
};

/// "3f2a 91c0 77de" of a digest in hexadecimal.
QString shortCode(const QString &digest);
/// Whether a code typed from paper belongs to the digest: twelve hexadecimal digits or all
/// sixty-four, in either case, with any spaces and hyphens.
bool codeMatches(const QString &typed, const QString &digest);

} // namespace loopwright
