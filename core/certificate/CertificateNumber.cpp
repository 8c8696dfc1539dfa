#include "core/certificate/CertificateNumber.h"

#include <QStringList>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int tagLength = 6;
constexpr int bodyLength = 2 + tagLength + 5;
constexpr int longestTyped = 80; // with all that stands between
constexpr int shortCodeLength = 12;

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

bool isCapital(QChar c)
{
    return c >= u'A' && c <= u'Z';
}

bool isDigits(QStringView text)
{
    return std::all_of(text.begin(), text.end(), isDigit);
}

/// Year, tag and sequence, with anything as check digits.
bool hasForm(QStringView characters)
{
    const QStringView tag = characters.sliced(2, tagLength);
    return isDigits(characters.first(2)) && isDigits(characters.sliced(2 + tagLength)) &&
           std::all_of(tag.begin(), tag.end(), [](QChar c) { return isDigit(c) || isCapital(c); });
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

std::optional<QString> mod97CheckDigits(QStringView characters)
{
    if (characters.isEmpty())
        return std::nullopt;
    int rest = 0;
    for (const QChar c : characters) {
        if (isDigit(c))
            rest = (rest * 10 + (c.unicode() - u'0')) % 97;
        else if (isCapital(c))
            rest = (rest * 100 + (c.unicode() - u'A' + 10)) % 97;
        else
            return std::nullopt;
    }
    return padded((98 - rest * 100 % 97) % 97, 2);
}

QString CertificateNumber::text() const
{
    const QString first = padded(year % 100, 2), last = padded(sequence, 5);
    const QString body = first + station + last;
    return QStringList{first, station, last, mod97CheckDigits(body).value_or(QString())}.join('-');
}

Result<CertificateNumber> CertificateNumber::parse(const QString &typed)
{
    const QString all = withoutGaps(typed).toUpper();
    if (typed.size() > longestTyped || all.size() != bodyLength + 2 || !hasForm(all))
        return failure(ErrorCode::BadInput,
                       QString("\"%1\" is not a certificate number: two digits, six letters and "
                               "digits, five digits and two are expected, such as %2")
                           .arg(typed.left(40), CertificateNumber{2026, "K7M4QP", 42}.text()));
    const QStringView body = QStringView(all).first(bodyLength);
    const CertificateNumber number{2000 + body.first(2).toInt(),
                                   body.sliced(2, tagLength).toString(), body.last(5).toInt()};
    if (QStringView(all).last(2) != *mod97CheckDigits(body) || number.sequence == 0)
        return failure(ErrorCode::BadInput,
                       QString("the check digits of \"%1\" do not fit: a character was misread")
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
