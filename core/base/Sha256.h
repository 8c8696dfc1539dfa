#pragma once
// SHA-256 over many small texts: one object serves them all.

#include <QByteArrayView>
#include <QCryptographicHash>

#include <array>

namespace loopwright {

class Sha256
{
public:
    using Digest = std::array<uchar, 32>;
    using Hex = std::array<char, 64>; ///< lower case

    Digest of(QByteArrayView bytes);
    Hex hexOf(QByteArrayView bytes);

    /// False if the text has not 64 lower-case hexadecimal digits.
    static bool read(QByteArrayView hex, Digest &digest);

private:
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
};

inline QByteArrayView view(const Sha256::Hex &hex)
{
    return QByteArrayView(hex.data(), qsizetype(hex.size()));
}

} // namespace loopwright
