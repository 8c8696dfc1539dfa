#pragma once
// The number of a certificate, YY-TTTTTT-NNNNN-CC: year, tag of the station that issued it (so that
// no two stations give out the same), sequence, and two check digits by ISO/IEC 7064 MOD 97-10 over
// what stands before them. They show a digit or letter read as another, and two neighbours
// exchanged (but M2 for 2M and X3 for 3X, whose values are equal); of letters read as digits 96
// in 97. Beside it the short code: the first twelve hexadecimal digits of the content's SHA-256,
// which can be typed from paper.

#include "core/base/Result.h"

#include <optional>

namespace loopwright {

/// Check digits by ISO/IEC 7064 MOD 97-10 (simplified procedure of its clause 8.4): "44" for "794".
/// A letter counts as two digits, A as 10 to Z as 35 (as in ISO 13616-1 and ISO 17442-1). Nothing
/// if `characters` is empty or holds others than ASCII digits and capitals.
std::optional<QString> mod97CheckDigits(QStringView characters);

struct CertificateNumber
{
    int year = 2000;  ///< 2000 to 2099
    QString station;  ///< tag: six capitals and digits
    int sequence = 1; ///< 1 to mostSequence, within year and station

    static constexpr int mostSequence = 99999;

    /// "26-K7M4QP-00042-17"
    QString text() const;

    /// Reads a number as typed: hyphens, spaces or neither, in 80 characters at most. BadInput if
    /// the form is wrong, a field is out of range, or the check digits do not fit.
    static Result<CertificateNumber> parse(const QString &typed);

    bool operator==(const CertificateNumber &) const = default;
};

/// "3f2a 91c0 77de" of a digest in hexadecimal.
QString shortCode(const QString &digest);
/// Whether a code typed from paper belongs to the digest: twelve hexadecimal digits or all
/// sixty-four, in either case, with any spaces and hyphens.
bool codeMatches(const QString &typed, const QString &digest);

} // namespace loopwright
