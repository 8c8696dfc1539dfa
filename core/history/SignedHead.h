#pragma once
// A head of the log with the signature of the station, as it leaves the machine.

#include "core/history/StationLog.h"

namespace loopwright {

struct SignedHead
{
    LogHead head;
    QString key;          ///< fingerprint; empty if nobody signed
    QByteArray signature; ///< over LogHead::text(), base64url without padding

    bool operator==(const SignedHead &) const = default;

    /// Of the head, with "key" and "signature" where it is signed.
    QJsonObject toJson() const;
    /// BadInput with its place.
    static Result<SignedHead> fromJson(QJsonObject object, const QString &place);
};

} // namespace loopwright
