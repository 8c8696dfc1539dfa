#include "app/trust/Signing.h"

#include <algorithm>
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

Result<QByteArray> SigningKey::sealedTo(const QByteArray &publicKey, const QByteArray &text) const
{
    unsigned char reader[crypto_box_PUBLICKEYBYTES], passing[crypto_box_PUBLICKEYBYTES],
        secret[crypto_box_SECRETKEYBYTES], seed[crypto_box_SEEDBYTES], nonce[crypto_box_NONCEBYTES];
    if (publicKey.size() != crypto_sign_PUBLICKEYBYTES ||
        crypto_sign_ed25519_pk_to_curve25519(reader, bytesOf(publicKey)) != 0)
        return failure(ErrorCode::BadInput, "This is no key that can be sealed to.");
    const QByteArray drawnFrom = publicKey + text;
    crypto_generichash(seed, sizeof seed, bytesOf(drawnFrom), qulonglong(drawnFrom.size()),
                       bytesOf(m_seed), std::size_t(m_seed.size()));
    crypto_box_seed_keypair(passing, secret, seed);
    // The form of crypto_box_seal: the passing key, then a box whose nonce is drawn from both keys.
    QByteArray keys(reinterpret_cast<const char *>(passing), sizeof passing);
    keys.append(reinterpret_cast<const char *>(reader), sizeof reader);
    crypto_generichash(nonce, sizeof nonce, bytesOf(keys), qulonglong(keys.size()), nullptr, 0);
    QByteArray sealed(text.size() + qsizetype(crypto_box_SEALBYTES), '\0');
    std::copy_n(passing, sizeof passing, room(sealed));
    const int boxed = crypto_box_easy(room(sealed) + sizeof passing, bytesOf(text),
                                      qulonglong(text.size()), nonce, reader, secret);
    sodium_memzero(secret, sizeof secret);
    sodium_memzero(seed, sizeof seed);
    if (boxed != 0)
        return failure(ErrorCode::BadInput, "This is no key that can be sealed to.");
    return sealed.toBase64(spelling);
}

Result<QByteArray> SigningKey::opened(const QByteArray &sealed) const
{
    const QByteArray bytes = QByteArray::fromBase64(sealed, spelling);
    unsigned char agreed[crypto_box_PUBLICKEYBYTES], secret[crypto_box_SECRETKEYBYTES];
    if (bytes.size() < qsizetype(crypto_box_SEALBYTES) ||
        crypto_sign_ed25519_pk_to_curve25519(agreed, bytesOf(m_public)) != 0 ||
        crypto_sign_ed25519_sk_to_curve25519(secret, bytesOf(m_secret)) != 0)
        return failure(ErrorCode::BadInput, "This is not sealed to the key of this station.");
    QByteArray text(bytes.size() - qsizetype(crypto_box_SEALBYTES), '\0');
    const int opened =
        crypto_box_seal_open(room(text), bytesOf(bytes), qulonglong(bytes.size()), agreed, secret);
    sodium_memzero(secret, sizeof secret);
    if (opened != 0)
        return failure(ErrorCode::BadInput, "This is not sealed to the key of this station.");
    return text;
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
