#pragma once
// Ed25519 signatures (RFC 8032): pure, over the text itself. A signature is written as base64url
// without padding (RFC 4648 clause 5): 86 characters.

#include "core/history/PublicKey.h"

#include <QByteArray>

namespace loopwright {

class SigningKey
{
public:
    static constexpr qsizetype seedBytes = 32;

    /// DiskTrouble if the machine gives no random numbers.
    static Result<SigningKey> make();
    /// BadInput if `seed` has not its 32 bytes.
    static Result<SigningKey> fromSeed(const QByteArray &seed);

    const QByteArray &publicKey() const { return m_public; }
    QString fingerprint() const { return fingerprintOf(m_public); }
    QByteArray sign(const QByteArray &text) const;
    /// `text` so that the holder of the secret half of `publicKey` alone can read it: a sealed box
    /// of libsodium over the key as one of X25519, in base64url. Its passing key is drawn from this
    /// secret, the reader and the text, so the same text makes the same box. BadInput if it is no
    /// key.
    Result<QByteArray> sealedTo(const QByteArray &publicKey, const QByteArray &text) const;
    /// What somebody sealed to this key; BadInput if it was not, or was altered.
    Result<QByteArray> opened(const QByteArray &sealed) const;
    /// The secret: for the folder of keys alone.
    const QByteArray &seed() const { return m_seed; }

private:
    SigningKey() = default;

    QByteArray m_seed, m_secret, m_public;
};

/// False also for a signature or key of a wrong form, and for another spelling of the same bytes.
bool isSignedBy(const QByteArray &publicKey, const QByteArray &text, const QByteArray &signature);

/// Whether `issuer` endorsed the station's key.
bool isEndorsedBy(const PublicKey &issuer, const PublicKey &station);

} // namespace loopwright
