#include "core/history/PublicKey.h"

#include "core/base/Json.h"

#include <QStringList>

namespace loopwright {

namespace {

constexpr qsizetype keyBytes = 32, fingerprintLength = 32, tagLength = 6, signatureLength = 86;
constexpr std::size_t mostKeys = 100;
constexpr qsizetype longestLine = 400;

bool isHexadecimal(const QString &text)
{
    for (const QChar c : text)
        if (!(c >= u'0' && c <= u'9') && !(c >= u'a' && c <= u'f'))
            return false;
    return true;
}

Result<PublicKey> readLine(const QString &line, const QString &place)
{
    const auto wrong = [&place](const char *what) {
        return failure(ErrorCode::BadInput, what, place);
    };
    QStringList words = line.split(u' ');
    PublicKey key;
    const QString kind = words.takeFirst();
    if (kind == issuerHolder)
        key.holder = issuerHolder;
    else if (kind == u"station" && !words.isEmpty() && words.first().size() == tagLength)
        key.holder = words.takeFirst();
    else
        return wrong("begins neither with \"issuer\" nor with \"station\" and its tag");
    const bool endorsed = words.size() == 4 && !key.isIssuers();
    if (words.size() != 2 && !endorsed)
        return wrong("is not: whose key, its fingerprint, 64 hexadecimal digits");
    key.bytes = QByteArray::fromHex(words[1].toLatin1());
    if (words[1].size() != 2 * keyBytes || !isHexadecimal(words[1]) || key.bytes.size() != keyBytes)
        return wrong("holds no key of 64 hexadecimal digits");
    if (words[0] != key.fingerprint())
        return wrong("names a fingerprint that is not that of the key");
    if (!endorsed)
        return key;
    key.endorsedBy = words[2];
    key.endorsement = words[3].toLatin1();
    if (key.endorsedBy.size() != fingerprintLength || key.endorsement.size() != signatureLength)
        return wrong("ends with no endorsement");
    return key;
}

} // namespace

const QString issuerHolder = QStringLiteral("issuer");

QString fingerprintOf(const QByteArray &publicKey)
{
    return sha256Hex(publicKey).first(fingerprintLength);
}

QString groupedFingerprint(const QString &fingerprint)
{
    QStringList groups;
    for (qsizetype at = 0; at < fingerprint.size(); at += 4)
        groups << fingerprint.mid(at, 4);
    return groups.join(' ');
}

bool PublicKey::isIssuers() const
{
    return holder == issuerHolder;
}

QByteArray PublicKey::endorsedText() const
{
    return QString("Loopwright station key\nstation %1\nkey %2\nendorsed by %3\n")
        .arg(holder, QString::fromLatin1(bytes.toHex()), endorsedBy)
        .toUtf8();
}

QString PublicKey::line(bool endorsed) const
{
    QStringList words{isIssuers() ? holder : "station " + holder, fingerprint(),
                      QString::fromLatin1(bytes.toHex())};
    if (endorsed && !isIssuers())
        words << endorsedBy << QString::fromLatin1(endorsement);
    return words.join(' ');
}

QString PublicKey::words() const
{
    return QString("%1, key %2")
        .arg(isIssuers() ? QString("the issuer") : "station " + holder,
             groupedFingerprint(fingerprint()));
}

QJsonObject PublicKey::toJson() const
{
    return {{"holder", holder},
            {"fingerprint", fingerprint()},
            {"public_key", QString::fromLatin1(bytes.toHex())},
            {"endorsed_by", endorsedBy.isEmpty() ? QJsonValue() : QJsonValue(endorsedBy)}};
}

Result<std::vector<PublicKey>> readPublicKeys(const QByteArray &text, const QString &place)
{
    std::vector<PublicKey> keys;
    if (text.size() > qsizetype(mostKeys) * longestLine)
        return failure(ErrorCode::BadInput, "is too long for a file of public keys", place);
    const QList<QByteArray> lines = text.split('\n');
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QString line = QString::fromUtf8(lines[i].trimmed());
        const QString where = QString("%1, line %2").arg(place).arg(i + 1);
        if (line.isEmpty())
            continue;
        if (keys.size() == mostKeys || line.size() > longestLine)
            return failure(ErrorCode::BadInput, "is too long for a file of public keys", where);
        LOOPWRIGHT_ASSIGN(auto key, readLine(line, where));
        keys.push_back(std::move(key));
    }
    if (keys.empty())
        return failure(ErrorCode::BadInput, "holds no public key", place);
    return keys;
}

} // namespace loopwright
