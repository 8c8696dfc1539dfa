#pragma once
// The public half of a key that signs (Ed25519, RFC 8032): of the issuer of certificates, or of a
// station. The issuer's key endorses that of a station, so that who knows the issuer's alone can
// follow what the station signed.

#include "core/base/Moment.h"
#include "core/base/Result.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>

#include <vector>

namespace loopwright {

/// The first 32 hexadecimal digits of the SHA-256 of the key's 32 bytes.
QString fingerprintOf(const QByteArray &publicKey);
/// In groups of four, for paper and screen.
QString groupedFingerprint(const QString &fingerprint);

struct PublicKey
{
    QString holder;         ///< "issuer", or the tag of a station
    QByteArray bytes;       ///< 32
    QString endorsedBy;     ///< fingerprint of the issuer's key; empty for an issuer's
    QByteArray endorsement; ///< its signature over endorsedText(), base64url without padding

    bool operator==(const PublicKey &) const = default;

    bool isIssuers() const;
    QString fingerprint() const { return fingerprintOf(bytes); }

    /// What the issuer's key signs to endorse this one: a line for each value.
    QByteArray endorsedText() const;
    /// "issuer" or "station TAG", fingerprint, 64 hexadecimal digits; with `endorsed`, for a
    /// station's, the fingerprint of the issuer's key and its signature follow.
    QString line(bool endorsed) const;
    /// "station K7M4QP, key 3f2a …", for a person.
    QString words() const;
    QJsonObject toJson() const;
};

extern const QString issuerHolder; ///< "issuer"

/// Lines of PublicKey::line(); empty ones are passed over. BadInput, with the line, if one is
/// wrong, the fingerprint is not that of the key, or there is none or more than a hundred.
Result<std::vector<PublicKey>> readPublicKeys(const QByteArray &text, const QString &place);

} // namespace loopwright
