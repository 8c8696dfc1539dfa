#pragma once
// The log of a station: one chain of digests over all events of a set of records, in the order in
// which they were recorded, with the rows that each event wrote. Its head goes out with papers and
// copies; whoever holds one witnesses every event up to it.

#include "core/base/Moment.h"
#include "core/base/Result.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>

namespace loopwright {

/// The end of the log at some time.
struct LogHead
{
    QString station;     ///< tag: six letters and digits
    qint64 position = 0; ///< events up to here, from 1; 0 for an empty log
    QString digest;      ///< SHA-256 of the log up to here; empty for an empty log
    Moment at;           ///< when the last event was recorded

    bool operator==(const LogHead &) const = default;

    /// What is signed: a line for each value, which a person can read.
    QByteArray text() const;
    /// "Log of station ABC234 at event 1042: 3f9a…", whole, for papers.
    QString paperText() const;
    QJsonObject toJson() const; ///< {"digest","position","station","time"}
    static Result<LogHead> fromJson(const QJsonObject &object, const QString &place);
};

/// What an event's log_digest is taken over; `sealed` has a line for each row that it wrote.
struct LogLink
{
    QByteArrayView station, before, digest, sealed; ///< `before`: the log_digest before
    qint64 position = 0;

    void appendTo(QByteArray &bytes) const;
};

} // namespace loopwright
