#pragma once
// A fact is a piece of evidence as it was recorded: who, when, with what, and what was seen. It is
// never edited; a further fact voids it. One codec serves the record file, the stored payload, the
// digest and the export.

#include "core/base/Json.h"
#include "core/calls/CallFact.h"
#include "core/errortest/DetectorFact.h"
#include "core/errortest/RunFact.h"
#include "core/loop/AnalogFact.h"
#include "core/loop/LoopFact.h"
#include "core/order/JobFacts.h"
#include "core/order/ServiceOrder.h"
#include "core/safety/HazardClosedFact.h"
#include "core/safety/SafetyFact.h"
#include "core/safety/VisitFact.h"
#include "core/turnup/LayerFact.h"

#include <variant>

namespace loopwright {

/// A recorded fact no longer counts: which, why, and who says so.
struct VoidFact
{
    QString fact; ///< id of the voided fact
    QString because;
    QString by;

    static VoidFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    bool operator==(const VoidFact &) const = default;
};

/// A supervisor lets criteria pass that are not met or lack evidence.
struct ExceptionFact
{
    QStringList criteria;
    QString because;
    QString by;
    /// Ids of the order's facts when it was made. A fact that is not among them is new, whatever
    /// its time: late entry too ends an exception.
    QStringList known;

    static ExceptionFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    bool operator==(const ExceptionFact &) const = default;
};

/// In the order of FactBody's alternatives.
enum class FactKind
{
    Visit,
    Safety,
    Changed,
    SelfTest,
    Loop,
    Layer,
    Call,
    Detector,
    Run,
    Analog,
    Cleared,
    HazardClosed,
    Referred,
    MadeWith,
    Desk,
    Note,
    Void,      ///< written by the program alone
    Exception, ///< written by the program alone
};
template<>
struct EnumCodes<FactKind>
{
    static constexpr std::pair<FactKind, const char *> table[] = {
        {FactKind::Visit, "visit"},       {FactKind::Safety, "safety"},
        {FactKind::Changed, "changed"},   {FactKind::SelfTest, "self_test"},
        {FactKind::Loop, "loop"},         {FactKind::Layer, "layer"},
        {FactKind::Call, "call"},         {FactKind::Detector, "detector"},
        {FactKind::Run, "run"},           {FactKind::Analog, "analog"},
        {FactKind::Cleared, "cleared"},   {FactKind::HazardClosed, "hazard_closed"},
        {FactKind::Referred, "referred"}, {FactKind::MadeWith, "made_with"},
        {FactKind::Desk, "desk"},         {FactKind::Note, "note"},
        {FactKind::Void, "void"},         {FactKind::Exception, "exception"}};
};

using FactBody =
    std::variant<VisitFact, SafetyFact, ChangedFact, SelfTestFact, LoopFact, LayerFact, CallFact,
                 DetectorFact, RunFact, AnalogFact, ClearedFact, HazardClosedFact, ReferredFact,
                 MadeWithFact, DeskFact, NoteFact, VoidFact, ExceptionFact>;

/// "Safety card", "Run", …: what a fact of the kind is called.
const char *factName(FactKind kind);

struct Fact
{
    QString id; ///< UUID, lower case
    Moment at;
    QString order;
    QString installer;
    QString instrument; ///< empty if none was named
    QString pair;       ///< that it was measured on, as it was written; empty if none was named
    FactBody body;

    FactKind kind() const { return FactKind(body.index()); }
    QJsonObject toJson() const;
    QString digest() const { return digestOf(toJson()); }

    template<class T>
    const T *as() const
    {
        return std::get_if<T>(&body);
    }

    /// Reads a stored fact, voids and exceptions included.
    static Result<Fact> fromJson(const QJsonObject &object, const QString &place);
};

QStringList idsOf(const std::vector<Fact> &facts);

/// A job record: the facts of one order as a file delivers them.
struct JobRecord
{
    QString order;
    std::vector<Fact> facts;
};

/// Reads `{"order","installer","instrument","pair","facts":[…]}`. BadInput with the place of the
/// first error; nothing is taken from a record of which one fact is wrong. A fact without an id is
/// given `newId()`.
Result<JobRecord> readJobRecord(const QJsonObject &object, const QString &place,
                                const std::function<QString()> &newId);

/// Whether the order has the channel and terminal that the fact speaks of; BadInput if not.
Result<void> checkFits(const Fact &fact, const ServiceOrder &order, const QString &place);

/// What a record may say in a fact of the kind, besides the head that all have: the table that its
/// codec reads by. Empty for what the program alone writes.
std::span<const FactField> fieldsOf(FactKind kind);

/// The kinds that a record may hold.
QList<FactKind> recordedKinds();

} // namespace loopwright
