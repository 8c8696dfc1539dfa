#pragma once
// The one function that accepts. It is pure: the same input gives the same decision, byte for byte,
// for ever; so the input is stored with the decision and can be decided again.

#include "core/acceptance/Decision.h"
#include "core/acceptance/Visits.h"
#include "core/base/LimitSet.h"
#include "core/office/Office.h"
#include "core/order/OrderScope.h"

namespace loopwright {

/// An identifier or pair of the order that another circuit holds.
struct Conflict
{
    QString field; ///< column of the order, e.g. "dn_1"
    QString kind;  ///< "dn", "spid" or "pair"
    QString value;
    QString circuit; ///< the one that holds it

    bool operator==(const Conflict &) const = default;
    /// The sentence that import, form and decision all say.
    QString reason() const;
};

/// The order itself was changed after it was taken in; retires evidence as a `changed` fact does.
struct OrderChange
{
    QString what; ///< "pair" or "identifiers"
    Moment at;

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
    std::vector<Visit> visits;     ///< shareVisits(): empty where the facts say them
    std::vector<Fact> selfTests;   ///< shareVisits(): made in other orders on those visits

    QJsonObject toJson() const;
    static Result<DecisionInput> fromJson(const QJsonObject &object, const QString &place);
};

/// `limits` is the set whose version the input names.
Decision decide(const DecisionInput &input, const LimitSet &limits);

/// The stage of an order for the board: its first open station, "certificate" when only that is
/// left, "done" at the end. `finished`: a certificate was issued, or the order was completed or
/// cancelled.
QString stageOf(const Decision &decision, const DecisionInput &input, bool finished);

} // namespace loopwright
