#pragma once
// What happened, and whether the records still say so.

#include "app/actions/Records.h"
#include "core/certificate/CertificateClaims.h"
#include "core/history/Event.h"
#include "core/history/SignedHead.h"

#include <QJsonObject>

namespace loopwright {

/// Events of an order; NotFound if there is no such order.
Result<std::vector<Event>> orderHistory(Records &records, const QString &orderNumber);

struct BrokenLink
{
    QString subject;  ///< chain: "circuit:…" or "register"
    qint64 event = 0; ///< its place in the chain, from 1; 0 if no event is left to name
    QString what;     ///< one sentence
};

/// Something that left the machine and must be in the records.
struct Witnessed
{
    QString what;     ///< "event 12 of the log of K7M4QP", "certificate 26-K7M4QP-00042-17"
    QString signedBy; ///< empty if nobody signed whose key the records know: no proof by itself
};

struct HistoryVerdict
{
    qint64 events = 0;
    std::vector<BrokenLink>
        broken; ///< the first broken link of each chain, and each row that was edited
    std::vector<Witnessed> witnessed;

    /// {"verdict":"whole|broken","events","broken":[…],"witnessed":[{"what","signed_by"}]}
    QJsonObject toJson() const;
};

/// What a later paper or file says of the records.
struct Witnesses
{
    std::vector<SignedHead> heads;          ///< the log must contain them
    std::vector<SignedClaims> certificates; ///< the records must hold those that they gave
};
/// What a file holds: one head or a list as `logHead` tells them, or a certificate with its head,
/// which is of the moment before it was issued, and its number. BadInput if it holds none, or a
/// certificate lost the signature of its head.
Result<Witnesses> witnessesIn(const QByteArray &file, const QString &name);
/// The same of a file at a path, or if that is a backup, of the head that lies beside it.
Result<Witnesses> witnessesOf(const QString &path);

/// The newest head that this machine signed for the station is a witness always. A signature must
/// fit, if the records know the key.
Result<HistoryVerdict> verifyHistory(Records &records, const Progress &progress = {},
                                     Witnesses witnesses = {});

/// Where the log of the station ends now, signed if the station has its key at hand.
Result<SignedHead> logHead(Records &records);

} // namespace loopwright
