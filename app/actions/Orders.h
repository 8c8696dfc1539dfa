#pragma once
// One order at a time: check what is typed, take it in or change it, complete it, cancel it, and
// see all of it.

#include "app/actions/Board.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/StationConflicts.h"
#include "core/acceptance/Judge.h"
#include "core/acceptance/Plan.h"
#include "core/certificate/CertificateContent.h"
#include "core/history/Event.h"

namespace loopwright {

struct StoredOrder;

struct OrderVerdict
{
    Findings findings;      ///< each with its column in `field`; the same sentences as an import
    bool malformed = false; ///< cannot be taken in
    bool held = false;      ///< can be, but its identifiers are in error or taken
    bool exists = false;    ///< an order of this number is there
    bool unchanged = false; ///< and has these very values
    /// What was changed, if it made no evidence old: what undoPlan() takes back.
    ColumnChanges changes = {};
};

/// What would be said of these fields; changes nothing. For the form, as one types.
Result<OrderVerdict> checkOrder(Records &records, const OrderFields &fields);
/// Takes the order in. Refused with the first reason if it is malformed, or is there with other
/// values and `update` is not set. A held order is taken in.
Result<OrderVerdict> putOrder(Records &records, const OrderFields &fields, bool update,
                              bool sameWires = false);

/// An accepted order (or a disconnect, or record-only that is accepted): planned identifiers become
/// working, the old ones are released, in one transaction. Refused otherwise, with the reason.
Result<void> completeOrder(Records &records, const QString &number);
/// Releases what the order planned. Refused for a completed order or without a reason.
Result<void> cancelOrder(Records &records, const QString &number, const QString &because);
/// The same of several, all or none: Refused, naming each of them that cannot be. No act takes it
/// back.
Result<void> cancelOrders(Records &records, const QStringList &numbers, const QString &because);

struct FactView
{
    Fact fact;
    QString station = {}; ///< that recorded it, by name or tag; empty: here
    bool voided = false;
    QString voidedBy, voidedBecause; ///< if voided
};

struct CertificateView
{
    QString number;
    QString digest;
    QString code; ///< short check code
    Moment issuedAt;
    int copies = 0;             ///< issues after the first
    Signatures signatures = {}; ///< of the content, and of further issues
};

/// Everything that the job page and `order show` need.
struct OrderView
{
    OrderView() = default;
    OrderView(OrderView &&) = default;
    OrderView &operator=(OrderView &&) = default;

    ServiceOrder order;
    OrderStatus status = OrderStatus::Open;
    bool held = false;
    ServingOffice office;
    QList<TestLine> testLines; ///< for the installer's page only, never for a customer
    QString installerName;
    QList<Person> people; ///< the registered ones
    DecisionInput input;
    LimitSet limits;   ///< by which it is judged
    Judged judged;     ///< points into `input`
    Decision decision; ///< what `decide` answers now
    Moment now;        ///< of the records' clock, when it was read
    Stage stage = stageAt(Station::Identifiers);
    std::vector<FactView> facts; ///< oldest first, voids and exceptions among them
    std::vector<Event> events;   ///< of the order, oldest first
    std::vector<CertificateView> certificates;
    std::vector<BoardRow> alsoHere;       ///< the other open orders at these premises, by due date
    std::vector<OutAt> out;               ///< the vans that have it
    std::vector<ShownConflict> conflicts; ///< between stations, open ones
    std::vector<Visit> visits;            ///< to these premises, on the days of the facts and today

    QJsonObject toJson() const; ///< without the unpublished numbers
};

/// The steps of the order as they stand in a situation; they point into the view.
std::vector<Step> stepsOf(const OrderView &view, Situation situation);

/// What is next on the order, one sentence, by the plan as it stands now.
Text nextSentenceOf(const OrderView &view);

/// NotFound if there is no such order.
Result<OrderView> showOrder(Records &records, const QString &number);
/// The same of an order that was read already, without register, premises and visits: what a
/// circuit keeps of it.
Result<OrderView> judgedOrder(Records &records, const StoredOrder &stored);

} // namespace loopwright
