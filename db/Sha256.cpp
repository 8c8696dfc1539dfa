#include "db/Sha256.h"

#include <QtGlobal>

#include <openssl/evp.h>

namespace loopwright {

namespace {

constexpr uchar noDigit = 0xFF;

/// The value of each character as a lower-case hexadecimal digit: the check of the history reads a
/// hundred of them for each row.
constexpr auto hexDigits = [] {
    std::array<uchar, 256> values{};
    values.fill(noDigit);
    for (uchar value = 0; value < 16; ++value)
        values[uchar("0123456789abcdef"[value])] = value;
    return values;
}();

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
    const char *in = hex.data();
    uchar all = 0;
    for (uchar &byte : digest) {
        const uchar high = hexDigits[uchar(*in++)], low = hexDigits[uchar(*in++)];
        all |= high | low;
        byte = uchar(high << 4 | low);
    }
    return all < 16;
}

} // namespace loopwright
