#pragma once
// What happened, and whether the records still say so.

#include "app/actions/Records.h"
#include "core/history/Event.h"
#include "core/history/StationLog.h"

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

struct HistoryVerdict
{
    qint64 events = 0;
    std::vector<BrokenLink>
        broken; ///< the first broken link of each chain, and each row that was edited

    QJsonObject toJson() const; ///< {"verdict":"whole|broken","events","broken":[…]}
};
/// The log must contain each of `heads`.
Result<HistoryVerdict> verifyHistory(Records &records, const Progress &progress = {},
                                     const std::vector<LogHead> &heads = {});

/// Where the log of the station ends now. Its canonical text is what is signed.
Result<LogHead> logHead(Records &records);
/// The heads that a file holds: one or a list as `logHead` tells them, or a certificate. BadInput
/// if it holds none.
Result<std::vector<LogHead>> headsIn(const QByteArray &file, const QString &name);

} // namespace loopwright
