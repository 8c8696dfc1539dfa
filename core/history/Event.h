#pragma once
// One thing that was done to the records, as the history keeps it: to what, by whom, when, what. An
// event also seals the rows that it wrote: it names each with its digest, so that a row edited with
// another program no longer agrees with its event.
//
// Times: `at` is when it was done as far as the work is concerned (it may be given, for late
// entry), `recordedAt` is the real clock of the machine that wrote it.

#include "core/base/Moment.h"
#include "core/base/Result.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>

#include <vector>

namespace loopwright {

class JsonReader;

/// A row that an event wrote: which kind of row, its id that travels, and the digest of its
/// content.
struct Seal
{
    QString row; ///< "fact", "decision", "certificate", …
    QString id;
    QString digest; ///< SHA-256, lower-case hexadecimal

    bool operator==(const Seal &) const = default;
};

struct Event
{
    QString subject; ///< whose chain it belongs to: circuitSubject(number), or registerSubject()
    QString order;   ///< order number; empty if no single order is meant
    QString by;
    Moment at;
    Moment recordedAt; ///< filled in when the event is committed
    QString kind;      ///< text code, e.g. "order_taken"
    QJsonObject detail;

    // The place in the chain, given when the event is committed (HistoryChain).
    qint64 sequence = 0; ///< 1 for the first event of a subject, then without gaps
    QString previous;    ///< digest of the event before; empty for the first
    QString digest;      ///< SHA-256 over EventBytes: all the above as it is stored

    // The place in the log of the station, likewise (StationLog.h). No part of the digest.
    qint64 logPosition = 0; ///< 1 for the first event of a station, then without gaps
    QString logDigest;

    /// For people and programs that read the history; times are in the writer's offset.
    QJsonObject toJson() const;
    /// All that the digest is taken over, and the digest: how an event travels.
    QJsonObject chainJson() const;
    static Event readChain(JsonReader &reader);
    QString computedDigest() const;

    /// The seals stand in the detail under "seals".
    void addSeals(const std::vector<Seal> &seals);
    std::vector<Seal> seals() const;
};

/// An event as the records store it, text by text in UTF-8: what its digest is taken over. So the
/// digest can be computed anew over what is stored, with no reading in between.
struct EventBytes
{
    QByteArrayView subject, order, by, atUtc, recordedUtc, kind, detail, previous;
    qint64 atOffset = 0, recordedOffset = 0, sequence = 0;

    /// Appends the canonical JSON (RFC 8785) of {"at", "at_offset", "by", "detail", "kind",
    /// "order", "previous", "recorded_at", "recorded_offset", "sequence", "subject"}.
    void appendTo(QByteArray &bytes) const;
};

/// The chain of one circuit; an order's history is a view of its circuit's chain.
QString circuitSubject(const QString &circuitNumber);
/// The one chain for offices, installers, instruments and limit sets.
QString registerSubject();

} // namespace loopwright
