#include "core/certificate/CertificateNumber.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int digitsWithoutCheck = 10;
constexpr int shortCodeLength = 12;

bool isDigits(QStringView text)
{
    return std::all_of(text.begin(), text.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
}

QString withoutGaps(const QString &typed)
{
    QString kept;
    for (const QChar c : typed)
        if (!c.isSpace() && c != u'-' && c != QChar(0x2013))
            kept += c;
    return kept;
}

QString padded(int value, int width)
{
    return QString::number(value).rightJustified(width, u'0');
}

} // namespace

std::optional<QString> mod97CheckDigits(QStringView digits)
{
    if (digits.isEmpty() || !isDigits(digits))
        return std::nullopt;
    int rest = 0;
    for (const QChar c : digits)
        rest = (rest * 10 + (c.unicode() - u'0')) % 97;
    return padded((98 - rest * 100 % 97) % 97, 2);
}

QString CertificateNumber::text() const
{
    const QString body = padded(year % 100, 2) + padded(station, 3) + padded(sequence, 5);
    return body.first(2) + u'-' + body.sliced(2, 3) + u'-' + body.sliced(5) + u'-' +
           *mod97CheckDigits(body);
}

Result<CertificateNumber> CertificateNumber::parse(const QString &typed)
{
    const QString digits = withoutGaps(typed);
    if (digits.size() != digitsWithoutCheck + 2 || !isDigits(digits))
        return failure(ErrorCode::BadInput,
                       QString("\"%1\" is not a certificate number: twelve digits are expected, "
                               "such as %2")
                           .arg(typed.left(40), CertificateNumber{2026, 7, 42}.text()));
    const QStringView body = QStringView(digits).first(digitsWithoutCheck);
    const CertificateNumber number{2000 + body.first(2).toInt(), body.sliced(2, 3).toInt(),
                                   body.sliced(5).toInt()};
    if (QStringView(digits).last(2) != *mod97CheckDigits(body) || number.sequence == 0)
        return failure(ErrorCode::BadInput,
                       QString("the check digits of \"%1\" do not fit: a digit was misread")
                           .arg(typed.left(40)));
    return number;
}

QString shortCode(const QString &digest)
{
    return digest.sliced(0, 4) + u' ' + digest.sliced(4, 4) + u' ' + digest.sliced(8, 4);
}

bool codeMatches(const QString &typed, const QString &digest)
{
    const QString code = withoutGaps(typed).toLower();
    return (code.size() == shortCodeLength && digest.startsWith(code)) ||
           (code.size() == digest.size() && code == digest);
}

} // namespace loopwright
