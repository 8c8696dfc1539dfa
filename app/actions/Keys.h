#pragma once
// The keys that sign: the issuer's, which is one for all stations of an issuer, and that of this
// station, which the issuer's endorses. Both are made when something is signed for the first time.

#include "app/actions/Records.h"
#include "core/history/SignedHead.h"
#include "db/Transaction.h"

namespace loopwright {

/// Who signs for these records.
struct Signer
{
    SigningKey secret;
    PublicKey key; ///< of the station
    PublicKey issuer;
};

/// Signer of the station, made with its event if there was none yet. Refused if its secret key is
/// not on this machine: then a supervisor renews it. `transaction` must be committed for what was
/// made to count.
Result<Signer> signer(Records &records, Transaction &transaction);
/// As signer(), but makes nothing: nothing if there is none, or its secret is not here.
Result<std::optional<Signer>> signerAtHand(Records &records);
/// All keys of this station whose secret is on this machine, the newest first; but none that was
/// revoked. What was to be signed before a renewal can still be signed as it was to be.
Result<std::vector<Signer>> signersAtHand(Records &records);

/// A key of the records, newest last of each holder.
struct KnownKey
{
    PublicKey key;
    Moment since;
    bool inUse = false; ///< the newest of the issuer, or of this station
    bool here = false;  ///< its secret half is on this machine
    std::optional<Moment> revokedAt = {};

    QJsonObject toJson() const;
};
Result<std::vector<KnownKey>> knownKeys(Records &records);
/// The public keys for whoever checks a certificate, a line each: the issuer's, then those of
/// stations, the one in use last; older ones too, for what they signed, but none that was revoked.
/// They are made if there are none.
Result<QByteArray> publicKeyFile(Records &records);

struct Renewal
{
    bool issuersToo = false; ///< made anew in any case if the secret of the present one is not here
    QString because = {};
    /// What the old keys signed holds only where these records know it: others may hold them.
    bool revokeOld = false;
};
struct Renewed
{
    std::vector<PublicKey> made;
    QString station; ///< the tag: a new one if the station's secret key was not here, for then its
                     ///< records may be in use elsewhere too

    QJsonObject toJson() const;
};
/// By a supervisor. The old keys stay known. Usage without a reason; Refused if the issuer's
/// secret is here and cannot be read, unless it is to be made anew.
Result<Renewed> renewKeys(Records &records, const Renewal &renewal);

/// The key of another station, endorsed by the issuer's and known from now on. Refused if the
/// issuer's secret is not on this machine.
Result<PublicKey> endorse(Records &records, Transaction &transaction, PublicKey key);

/// The signature of the station over a head, for papers and files.
SignedHead signedHead(const LogHead &head, const Signer &signer);

} // namespace loopwright
