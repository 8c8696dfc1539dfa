#include "app/trust/Signing.h"

#include <sodium.h>

namespace loopwright {

namespace {

static_assert(SigningKey::seedBytes == crypto_sign_SEEDBYTES);

constexpr auto spelling = QByteArray::Base64UrlEncoding | QByteArray::OmitTrailingEquals;

const unsigned char *bytesOf(const QByteArray &bytes)
{
    return reinterpret_cast<const unsigned char *>(bytes.constData());
}

unsigned char *room(QByteArray &bytes)
{
    return reinterpret_cast<unsigned char *>(bytes.data());
}

} // namespace

Result<SigningKey> SigningKey::make()
{
    if (sodium_init() < 0)
        return failure(ErrorCode::DiskTrouble, "The machine gives no random numbers.");
    QByteArray seed(seedBytes, '\0');
    randombytes_buf(seed.data(), std::size_t(seed.size()));
    return fromSeed(seed);
}

Result<SigningKey> SigningKey::fromSeed(const QByteArray &seed)
{
    if (seed.size() != seedBytes)
        return failure(ErrorCode::BadInput, "A secret key has 32 bytes.");
    SigningKey key;
    key.m_seed = seed;
    key.m_secret.resize(crypto_sign_SECRETKEYBYTES);
    key.m_public.resize(crypto_sign_PUBLICKEYBYTES);
    crypto_sign_seed_keypair(room(key.m_public), room(key.m_secret), bytesOf(seed));
    return key;
}

QByteArray SigningKey::sign(const QByteArray &text) const
{
    QByteArray signature(crypto_sign_BYTES, '\0');
    crypto_sign_detached(room(signature), nullptr, bytesOf(text), qulonglong(text.size()),
                         bytesOf(m_secret));
    return signature.toBase64(spelling);
}

bool isSignedBy(const QByteArray &publicKey, const QByteArray &text, const QByteArray &signature)
{
    const QByteArray bytes = QByteArray::fromBase64(signature, spelling);
    return publicKey.size() == crypto_sign_PUBLICKEYBYTES && bytes.size() == crypto_sign_BYTES &&
           bytes.toBase64(spelling) == signature &&
           crypto_sign_verify_detached(bytesOf(bytes), bytesOf(text), qulonglong(text.size()),
                                       bytesOf(publicKey)) == 0;
}

bool isEndorsedBy(const PublicKey &issuer, const PublicKey &station)
{
    return issuer.isIssuers() && !station.isIssuers() &&
           station.endorsedBy == issuer.fingerprint() &&
           isSignedBy(issuer.bytes, station.endorsedText(), station.endorsement);
}

} // namespace loopwright
