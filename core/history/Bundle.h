#pragma once
// A bundle: orders with what was done on them, as one station hands them to another in a file. Out
// it goes from the office to a van, back from a van to the office. What is stored (orders, facts,
// decisions, certificates) stands in it as text, byte for byte, and is read by whoever takes it in.
// It holds no clock of writing, so the same work makes the same bundle.

#include "core/base/EnumCodes.h"
#include "core/history/Event.h"

#include <QJsonArray>
#include <QStringList>

namespace loopwright {

enum class BundleKind
{
    Out,
    Back
};
template<>
struct EnumCodes<BundleKind>
{
    static constexpr std::pair<BundleKind, const char *> table[] = {{BundleKind::Out, "out"},
                                                                    {BundleKind::Back, "back"}};
};

/// An event of another station.
struct ForeignEvent
{
    QString station; ///< tag
    Event event;
};

struct BundledFact
{
    QByteArray content; ///< canonical JSON of the fact
    QString station;    ///< tag of the station that recorded it
    QString pair;       ///< that the order had there when it was recorded
};

struct BundledDecision
{
    QString id, outcome, limitSet;
    Moment at;
    QByteArray input, result; ///< canonical JSON
};

struct BundledIssue
{
    QString fileSha256, paper;
    Moment at;
};

struct BundledCertificate
{
    QString number, decision;
    Moment at;
    QByteArray content; ///< canonical JSON
    QByteArray claims;
    std::vector<BundledIssue> issues;
};

struct BundledOrder
{
    QString number, uuid, circuit, circuitUuid;
    QString status;
    QByteArray content; ///< canonical JSON of the order as the sender has it
    QByteArray base; ///< back: as it was taken along; empty for an order that was made in the van
    /// The sender's events: out those of the order, back the chain of its circuit.
    std::vector<ForeignEvent> events;
    std::vector<BundledFact> facts;
    std::vector<BundledDecision> decisions;
    std::vector<BundledCertificate> certificates;
    QStringList seen; ///< back: ids of the facts of others that the van had
    QStringList with; ///< out: the names of other stations that have it
    /// Out: tags of stations that changed the order otherwise than the office, and nobody decided.
    QStringList undecided;
};

/// The log of the station that tells (StationLog.h): of each event from the place `from` on the
/// first digits of its log_digest, up to the last event that the bundle tells of. Two sets of
/// records that were one differ in it from their first own event on, whichever circuits they work
/// on.
struct ToldLog
{
    static constexpr int digits = 16;

    qint64 from = 1;
    QString digests;

    qint64 last() const { return from - 1 + digests.size() / digits; }
    /// The first place that `known` (from 1) says otherwise; 0 if there is none.
    qint64 partsFrom(const QString &known) const;
    /// `known`, gone on as far as this one goes; as it is if this one does not reach it.
    QString continuing(const QString &known) const;
};

struct Bundle
{
    static constexpr int form = 1;

    BundleKind kind = BundleKind::Out;
    QString station; ///< tag of the van, whichever way it goes
    QString issuer; ///< fingerprint of the issuer's key; empty for a van that belongs to nobody yet
    int part = 1, parts = 1;
    std::vector<BundledOrder> orders;
    QStringList answers;   ///< back: the bundles that were opened
    bool keep = false;     ///< back: the orders stay out
    ToldLog log;           ///< back; empty from a program that did not tell it
    QString keys;          ///< out: lines of PublicKey::line(), with endorsements
    QJsonObject registers; ///< offices, people, instruments, limit sets, who issues
    QString testLines;     ///< out: sealed for the station

    QJsonObject toJson() const;
    /// BadInput with its place.
    static Result<Bundle> fromJson(const QJsonObject &object, const QString &place);
};

} // namespace loopwright
