#include "core/certificate/CertificateClaims.h"

#include "core/certificate/CertificateNumber.h"

namespace loopwright {

namespace {

constexpr qsizetype longestText = 4000; // bytes; a square holds no more than 2331 (ISO/IEC 18004)
constexpr qsizetype signatureLength = 86;
const QString between = QStringLiteral(", ");

QStringList listOf(const QString &line)
{
    return line.isEmpty() ? QStringList() : line.split(between);
}

auto wrong(const QString &place, int line, const QString &what)
{
    return failure(ErrorCode::BadInput, what, QString("%1, line %2").arg(place).arg(line));
}

/// As it was signed, without what a reader of codes adds. The signature is over line feeds alone,
/// so nothing can be dressed by it.
QByteArray asScanned(QByteArray text)
{
    if (text.startsWith("\xef\xbb\xbf"))
        text.remove(0, 3);
    text.replace("\r\n", "\n");
    while (text.endsWith('\n'))
        text.chop(1);
    return text;
}

/// A value must not end its line.
QString oneLine(const QString &value)
{
    return value.simplified();
}

} // namespace

CertificateClaims CertificateClaims::of(const CertificateContent &content, const QString &key)
{
    CertificateClaims claims{content.number,
                             content.issuedAt.localDate(),
                             content.outcome,
                             oneLine(content.circuit),
                             {},
                             {},
                             content.digest(),
                             key};
    for (const CertificateTerminal &terminal : content.terminals)
        if (!terminal.dn.isEmpty())
            claims.numbers << oneLine(terminal.dn);
    for (const CertificateCriterion &criterion : content.criteria)
        if (criterion.excepted)
            claims.exceptions << criterion.key;
    return claims;
}

QByteArray CertificateClaims::text() const
{
    const QStringList lines{number,
                            date.toString(Qt::ISODate),
                            toText(outcome),
                            circuit,
                            numbers.join(between),
                            exceptions.join(between),
                            digest,
                            key};
    return (lines.join('\n') + '\n').toUtf8();
}

Result<CertificateClaims> CertificateClaims::parse(const QByteArray &text, const QString &place)
{
    if (text.size() > longestText)
        return failure(ErrorCode::BadInput, "is too long for the claims of a certificate", place);
    const QStringList lines = QString::fromUtf8(text).split('\n');
    constexpr int count = 8;
    if (lines.size() != count + 1 || !lines.last().isEmpty())
        return failure(ErrorCode::BadInput, "does not hold the claims of a certificate", place);
    CertificateClaims claims{lines[0],
                             QDate::fromString(lines[1], Qt::ISODate),
                             OrderOutcome::Accepted,
                             lines[3],
                             listOf(lines[4]),
                             listOf(lines[5]),
                             lines[6],
                             lines[7]};
    const auto number = CertificateNumber::parse(claims.number);
    if (!number)
        return wrong(place, 1, number.error().message);
    if (!claims.date.isValid())
        return wrong(place, 2, "is no date");
    const auto outcome = fromText<OrderOutcome>(lines[2]);
    if (!outcome)
        return wrong(place, 3, "is no outcome");
    claims.outcome = *outcome;
    if (claims.digest.size() != 64)
        return wrong(place, 7, "is no SHA-256");
    // What is signed is bytes: another spelling of the same values is another text.
    if (claims.text() != text)
        return failure(ErrorCode::BadInput, "is not written as the claims of a certificate are",
                       place);
    return claims;
}

QJsonObject CertificateClaims::toJson() const
{
    return {{"certificate", number},
            {"date", date.toString(Qt::ISODate)},
            {"outcome", toText(outcome)},
            {"circuit", circuit},
            {"numbers", QJsonArray::fromStringList(numbers)},
            {"exceptions", QJsonArray::fromStringList(exceptions)},
            {"digest", digest},
            {"key", key}};
}

Result<SignedClaims> SignedClaims::parse(const QByteArray &text, const QString &place)
{
    if (text.size() > 2 * longestText)
        return failure(ErrorCode::BadInput, "is too long for the claims of a certificate", place);
    const QByteArray whole = asScanned(text);
    const qsizetype end = whole.lastIndexOf('\n') + 1;
    LOOPWRIGHT_ASSIGN(auto claims, CertificateClaims::parse(whole.first(end), place));
    const QByteArray signature = whole.sliced(end);
    if (signature.size() != signatureLength)
        return wrong(place, 9, "is no signature");
    return SignedClaims{std::move(claims), signature};
}

} // namespace loopwright
