#pragma once
// The file of a bundle: one line of canonical JSON {"bundle":{…},"id","key","signature"}. `id` is
// the SHA-256 of the canonical bundle, `key` the fingerprint of the signer's key, `signature`
// Ed25519 over a domain tag and the id.

#include "app/trust/Signing.h"
#include "core/history/Bundle.h"

namespace loopwright {

struct BundleFile
{
    Bundle bundle;
    QString id, key;
    QByteArray signature;

    QByteArray bytes() const;
    bool isSignedBy(const QByteArray &publicKey) const;
};

BundleFile signedBundle(Bundle bundle, const SigningKey &key);

/// Why a file is no bundle, as a code: "damaged" or "form".
struct BadBundle
{
    QString code;
    Error error;
};
tl::expected<BundleFile, BadBundle> readBundle(const QByteArray &bytes, const QString &fileName);

} // namespace loopwright
