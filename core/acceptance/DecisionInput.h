#pragma once
// All that a decision is made from: the order as it stood, what was changed on it, who else holds
// its identifiers, the instruments' calibration, the facts, the visits. It is stored with the
// decision, so that the decision can be repeated from it.

#include "core/acceptance/StationConflict.h"
#include "core/acceptance/Visits.h"
#include "core/base/Finding.h"
#include "core/office/Office.h"
#include "core/order/Claims.h"
#include "core/order/OrderScope.h"

namespace loopwright {

/// An identifier or pair of the order that another circuit holds.
struct Conflict
{
    QString field; ///< column of the order, e.g. "dn_1"
    ClaimKind kind = ClaimKind::Dn;
    QString value;
    QString circuit; ///< the one that holds it

    bool operator==(const Conflict &) const = default;
    /// The sentence that import, form and decision all say.
    Text reason() const;
    QJsonObject toJson() const;
    static Conflict read(JsonReader &reader);
};

/// The order itself was changed after it was taken in; retires evidence as a `changed` fact does.
/// If only the record of the pair was wrong ("same wires") nothing is retired: `alsoNamed` is
/// the name by which the same pair was known before.
struct OrderChange
{
    std::optional<ChangedWhat> what; ///< pair or identifiers; none: the record alone was corrected
    Moment at;
    QString alsoNamed = {};

    bool operator==(const OrderChange &) const = default;
};

/// Every finding about the identifiers of an order by the rules of its variant; what another
/// circuit holds is a Conflict. Empty for a disconnect, which assigns nothing.
Findings checkOrderIdentifiers(const ServiceOrder &order);

struct DecisionInput
{
    ServiceOrder order;
    OrderScope scope = OrderScope::Full;
    std::vector<Conflict> conflicts;
    std::vector<OrderChange> changes;
    QList<Instrument> instruments; ///< the registered ones that the facts name
    std::vector<Fact> facts;       ///< all of the order, voided ones and the voids too
    QString limitSet;              ///< version
    std::vector<Visit> visits;     ///< shareVisits(): empty if the facts say them
    std::vector<Fact> selfTests;   ///< shareVisits(): made in other orders on those visits
    std::optional<Moment> takenIn; ///< when the order was taken in
    QStringList afterEnd;          ///< ids recorded when the order was completed or cancelled
    /// Safety cards, closings and voids of other orders on this pair; empty unless one of the cards
    /// reads a hazard.
    std::vector<Fact> pairCards;
    std::vector<Fact> premisesCards; ///< the same of other pairs at the premises; told, no more
    QStringList bySupervisor;        ///< ids of the closings that a registered supervisor recorded
    /// That stations disagree about; safety cards of other orders too, as far as they are here.
    std::vector<SetAside> setAside;
    /// By id of a fact that is one of several contents of one id: that id.
    QMap<QString, QString> toldUnder;
    /// By id of a fact that names no pair and came from another station: the pair of the order
    /// there.
    QMap<QString, QString> measuredOn;

    /// The pair that a fact was made on: as it names it, or as its station had it.
    QString pairOf(const Fact &fact) const
    {
        return fact.pair.isEmpty() ? measuredOn.value(fact.id) : fact.pair;
    }

    QJsonObject toJson() const;
    static Result<DecisionInput> fromJson(const QJsonObject &object, const QString &place);
};

} // namespace loopwright
