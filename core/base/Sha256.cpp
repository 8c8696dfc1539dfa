#include "core/base/Sha256.h"

#include <algorithm>

namespace loopwright {

namespace {

int hexDigit(char c)
{
    return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

} // namespace

Sha256::Digest Sha256::of(QByteArrayView bytes)
{
    Digest digest;
    m_hash.reset();
    m_hash.addData(bytes);
    const QByteArrayView result = m_hash.resultView();
    std::copy(result.begin(), result.end(), reinterpret_cast<char *>(digest.data()));
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
