#pragma once
// SHA-256 over many small texts: one object serves them all. It is libcrypto's, which uses what the
// processor has for it: a check of the history is little else, and Qt 6.4's is many times slower
// (bench.history).

#include <QByteArrayView>

#include <array>
#include <memory>

struct evp_md_ctx_st;
struct evp_md_st;

namespace loopwright {

class Sha256
{
public:
    using Digest = std::array<uchar, 32>;
    using Hex = std::array<char, 64>; ///< lower case

    Sha256();

    Digest of(QByteArrayView bytes);
    Hex hexOf(QByteArrayView bytes);

    /// False if the text has not 64 lower-case hexadecimal digits.
    static bool read(QByteArrayView hex, Digest &digest);

private:
    struct Free
    {
        void operator()(evp_md_ctx_st *context) const;
        void operator()(evp_md_st *algorithm) const;
    };

    std::unique_ptr<evp_md_st, Free> m_algorithm;
    std::unique_ptr<evp_md_ctx_st, Free> m_context;
};

inline QByteArrayView view(const Sha256::Hex &hex)
{
    return QByteArrayView(hex.data(), qsizetype(hex.size()));
}

} // namespace loopwright
