#include "db/Sha256.h"

#include <QtGlobal>

#include <openssl/evp.h>

namespace loopwright {

namespace {

int hexDigit(char c)
{
    return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

} // namespace

void Sha256::Free::operator()(evp_md_ctx_st *context) const
{
    EVP_MD_CTX_free(context);
}

void Sha256::Free::operator()(evp_md_st *algorithm) const
{
    EVP_MD_free(algorithm);
}

Sha256::Sha256()
    : m_algorithm(EVP_MD_fetch(nullptr, "SHA256", nullptr))
    , m_context(EVP_MD_CTX_new())
{
    Q_ASSERT_X(m_algorithm && m_context, "Sha256", "libcrypto has no SHA-256");
}

Sha256::Digest Sha256::of(QByteArrayView bytes)
{
    Digest digest{};
    const bool done = EVP_DigestInit_ex2(m_context.get(), m_algorithm.get(), nullptr) == 1 &&
                      EVP_DigestUpdate(m_context.get(), bytes.data(), size_t(bytes.size())) == 1 &&
                      EVP_DigestFinal_ex(m_context.get(), digest.data(), nullptr) == 1;
    if (!done)
        qFatal("libcrypto takes no SHA-256"); // a digest that is none must not be stored
    return digest;
}

Sha256::Hex Sha256::hexOf(QByteArrayView bytes)
{
    Hex hex;
    auto out = hex.begin();
    for (const uchar byte : of(bytes)) {
        *out++ = "0123456789abcdef"[byte >> 4];
        *out++ = "0123456789abcdef"[byte & 15];
    }
    return hex;
}

bool Sha256::read(QByteArrayView hex, Digest &digest)
{
    if (hex.size() != qsizetype(2 * digest.size()))
        return false;
    for (std::size_t i = 0; i < digest.size(); ++i) {
        const int high = hexDigit(hex[qsizetype(2 * i)]), low = hexDigit(hex[qsizetype(2 * i + 1)]);
        if (high < 0 || low < 0)
            return false;
        digest[i] = uchar(high << 4 | low);
    }
    return true;
}

} // namespace loopwright
