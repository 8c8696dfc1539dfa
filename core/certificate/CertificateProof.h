#pragma once
// What a certificate carries so that it proves itself: the signed claims, the keys to follow the
// signatures by, and a head of the log, which makes its holder a witness of all that was recorded
// before.

#include "core/certificate/CertificateClaims.h"
#include "core/history/PublicKey.h"
#include "core/history/SignedHead.h"

namespace loopwright {

struct CertificateProof
{
    SignedClaims claims;
    std::vector<PublicKey> stations; ///< keys that signed something in the file, endorsed
    SignedHead head;

    bool operator==(const CertificateProof &) const = default;
};

} // namespace loopwright
