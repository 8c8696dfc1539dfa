#include "app/actions/BoardRefresh.h"

#include "app/actions/Events.h"
#include "app/actions/EvidenceStore.h"
#include "app/actions/LimitSets.h"
#include "core/acceptance/EvidenceDays.h"
#include "core/acceptance/PairInForce.h"
#include "core/acceptance/Referral.h"
#include "core/order/Claims.h"
#include "db/AssignmentStore.h"
#include "db/BoardStore.h"
#include "db/CertificateStore.h"
#include "db/ConflictStore.h"
#include "db/Connection.h"
#include "db/FactStore.h"
#include "db/HazardStore.h"
#include "db/MetaStore.h"
#include "db/StationStore.h"

#include <algorithm>

namespace loopwright {

namespace {

/// The names of the pair under which others must find the hazards that this order read or closed;
/// none if it did neither.
QStringList pairsOfHazards(const DecisionInput &input, const SafetyCards &cards)
{
    QStringList named; // with each of its hazards and closings
    for (const Hazard &hazard : cards.hazards())
        if (hazard.card->order == input.order.number)
            named << input.pairOf(*hazard.card);
    for (const Fact &fact : input.facts)
        if (fact.as<HazardClosedFact>())
            named << fact.pair;
    if (named.isEmpty())
        return {};
    QStringList pairs;
    for (const QString &name :
         pairInForce(input, standingFacts(input.facts)) + named + QStringList{input.order.pair})
        pairs << pairIdentity(name);
    pairs.removeDuplicates();
    if (pairs.size() > 1)
        pairs.removeAll(QString());
    return pairs;
}

/// The first open criterion in the order of the decision, what is not met before what is missing;
/// null if none is open.
const CriterionResult *firstFailing(const Decision &decision)
{
    for (const CriterionOutcome outcome : {CriterionOutcome::NotMet, CriterionOutcome::Missing})
        for (const CriterionResult &result : decision.criteria)
            if (result.open() && result.outcome == outcome)
                return &result;
    return nullptr;
}

/// Who must move first: as the desk holds the order, else of the referral that stands.
QString waitingOnOf(const ServiceOrder &order, const std::vector<Fact> &facts)
{
    if (order.isOnHold())
        return order.waitingOn;
    const Fact *referral = standingReferral(facts);
    const auto *referred = referral ? referral->as<ReferredFact>() : nullptr;
    return referred && referred->waitingOn ? toText(*referred->waitingOn) : QString();
}

void noteTakenOn(OrderState &state, QDate day)
{
    state.takenOn = day;
    state.acceptedOn = acceptanceDay(state.status, state.outcome, {state.acceptedOn}, day);
}

/// An order of the board was decided by this set: the board is of that set alone only if all
/// others are too.
Result<void> noteBoardLimits(Transaction &transaction, const QString &version)
{
    LOOPWRIGHT_ASSIGN(const auto noted, MetaStore(transaction.database()).boardLimits());
    if (!noted)
        return MetaStore::putBoardLimits(transaction, version);
    return *noted == version || noted->isEmpty() ? Result<void>()
                                                 : MetaStore::putBoardLimits(transaction, {});
}

} // namespace

namespace {

void askBeyondEvidence(const Database &database, const QString &order)
{
    (void)CertificateStore(database).ofOrder(order);
    (void)StationStore(database).outAt(order);
    (void)ConflictStore(database).ofOrder(order);
    (void)MetaStore(database).boardLimits();
}

} // namespace

void askForState(Records &records, const StoredOrder &stored)
{
    const Database &database = records.database();
    if (const auto limits = limitsFor(records, stored))
        (void)EvidenceStore(database).of(stored, limits->version());
    askBeyondEvidence(database, stored.order.number);
}

Result<DerivedState> derivedState(const Database &database, const StoredOrder &stored,
                                  const LimitSet &limits, const PendingEvent &pending)
{
    database.connection().foresee([&] {
        (void)EvidenceStore(database).of(stored, limits.version());
        askBeyondEvidence(database, stored.order.number);
    });
    LOOPWRIGHT_ASSIGN(auto input, EvidenceStore(database).of(stored, limits.version()));
    input.changes.insert(input.changes.end(), pending.changes.begin(), pending.changes.end());
    input.bySupervisor << pending.bySupervisor;
    input.afterEnd << pending.afterEnd;
    takeBack(input.changes, pending.takesBack);
    return derivedState(database, stored, input, judge(input, limits));
}

Result<DerivedState> derivedState(const Database &database, const StoredOrder &stored,
                                  const DecisionInput &input, const Judged &judged)
{
    const QString &number = stored.order.number;
    database.connection().foresee([&] { askBeyondEvidence(database, number); });
    LOOPWRIGHT_ASSIGN(const auto certificates, CertificateStore(database).ofOrder(number));
    const Decision &decision = judged.decision;
    const bool finished = stored.status != OrderStatus::Open || !certificates.empty();
    const std::vector<Hazard> hazards = judged.cards.open();
    DerivedState derived;
    derived.hazardPairs = pairsOfHazards(input, judged.cards);
    for (const Hazard &hazard : hazards)
        derived.hazards.push_back(hazardText(hazard, decision.order));
    OrderState &state = derived.state;
    state.status = stored.status;
    state.stage = stageOf(decision, input, finished);
    state.outcome = decision.outcome;
    if (const CriterionResult *failing = firstFailing(decision)) {
        state.criterion = failing->key;
        state.reason = failing->sentence().english();
    }
    if (!hazards.empty()) { // before everything else
        state.reason = derived.hazards.front().english();
        state.hazardAt = hazards.front().card->at;
    }
    if (stored.status == OrderStatus::Open)
        state.waitingOn = waitingOnOf(stored.order, input.facts);
    state.paper = stored.status != OrderStatus::Cancelled && isAccepted(decision.outcome) &&
                  getsCertificate(input.scope) && certificates.empty();
    state.hazard = !hazards.empty();
    const EvidenceDays days = evidenceDays(input);
    if (input.takenIn)
        state.takenOn = input.takenIn->localDate();
    state.acceptedOn = acceptanceDay(state.status, state.outcome, days, state.takenOn);
    state.visits = days.visits;
    state.facts = int(input.facts.size());
    state.runs = int(decision.runs.size());
    LOOPWRIGHT_ASSIGN(auto out, StationStore(database).outAt(number));
    state.out = std::move(out);
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(number));
    state.conflicts = int(std::ranges::count_if(conflicts, &StationConflict::isOpen));
    return derived;
}

namespace {

/// As it stands after the transaction: what was judged, on the board and among the hazards.
Result<void> putState(Records &records, Transaction &transaction, const StoredOrder &stored,
                      const LimitSet &limits, DerivedState &derived)
{
    if (stored.status == OrderStatus::Open)
        LOOPWRIGHT_TRY(noteBoardLimits(transaction, limits.version()));
    if (!derived.state.takenOn.isValid()) // this transaction takes it in
        noteTakenOn(derived.state, records.now().localDate());
    LOOPWRIGHT_TRY(HazardStore::note(transaction, stored.order, derived.hazardPairs));
    return BoardStore::put(transaction, stored.order, derived.state);
}

} // namespace

Result<std::vector<Text>> refreshState(Records &records, Transaction &transaction,
                                       const QString &orderNumber, const PendingEvent &pending)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(transaction.database()).get(orderNumber));
    return refreshState(records, transaction, stored, pending);
}

Result<std::vector<Text>> refreshState(Records &records, Transaction &transaction,
                                       const StoredOrder &stored, const PendingEvent &pending)
{
    LOOPWRIGHT_ASSIGN(const auto limits, limitsFor(records, stored));
    LOOPWRIGHT_ASSIGN(auto derived, derivedState(transaction.database(), stored, limits, pending));
    LOOPWRIGHT_TRY(putState(records, transaction, stored, limits, derived));
    return std::move(derived.hazards);
}

namespace {

/// Whether a reason names these conflicts and no other.
bool namesJust(const std::vector<Conflict> &conflicts, QString reason)
{
    for (const Conflict &conflict : conflicts) {
        const QString sentence = conflict.reason().english();
        if (!reason.contains(sentence))
            return false;
        reason.remove(sentence);
    }
    return !reason.contains(" is in use on circuit ");
}

} // namespace

Result<QStringList> claimForHeldOrders(Records &records, Transaction &transaction,
                                       std::vector<Event> &events)
{
    QStringList freed;
    LOOPWRIGHT_ASSIGN(const auto held, OrderStore(transaction.database()).held());
    for (const StoredOrder &stored : held) {
        if (worst(checkOrderIdentifiers(stored.order)) == Severity::Error)
            continue;
        LOOPWRIGHT_ASSIGN(const auto conflicts,
                          AssignmentStore(transaction.database()).conflictsOf(stored.order));
        if (!conflicts.empty())
            continue;
        LOOPWRIGHT_TRY(OrderStore::put(transaction, stored.order, false));
        LOOPWRIGHT_TRY(AssignmentStore::claim(transaction, stored.order));
        LOOPWRIGHT_TRY(refreshState(records, transaction, stored.order.number));
        events.push_back(orderEvent(records, stored.order, "order_no_longer_held", {}));
        freed << stored.order.number;
    }
    LOOPWRIGHT_TRY(tellHeldOrders(records, transaction, events));
    return freed;
}

Result<void> tellHeldOrders(Records &records, Transaction &transaction, std::vector<Event> &events)
{
    const Database &database = transaction.database();
    LOOPWRIGHT_ASSIGN(const auto held, OrderStore(database).held());
    for (const StoredOrder &stored : held) {
        LOOPWRIGHT_ASSIGN(const auto conflicts,
                          AssignmentStore(database).conflictsOf(stored.order));
        LOOPWRIGHT_ASSIGN(const auto shown, BoardStore(database).columnsOf(stored.order.number));
        if (namesJust(conflicts, shown.value("reason"))) // spares to judge every held order
            continue;
        LOOPWRIGHT_ASSIGN(const auto limits, limitsFor(records, stored));
        LOOPWRIGHT_ASSIGN(auto derived, derivedState(database, stored, limits));
        if (derived.state.reason == shown.value("reason"))
            continue; // a hazard is told before all else
        LOOPWRIGHT_TRY(putState(records, transaction, stored, limits, derived));
        events.push_back(orderEvent(records, stored.order, stillHeldKind, {}));
    }
    return {};
}

Result<void> refreshOrdersUsing(Records &records, Transaction &transaction,
                                const QString &instrument)
{
    LOOPWRIGHT_ASSIGN(const auto numbers,
                      FactStore(transaction.database()).openOrdersUsing(instrument));
    for (const QString &number : numbers)
        LOOPWRIGHT_TRY(refreshState(records, transaction, number));
    return {};
}

namespace {

/// Of what orders share that are worked on at one premises: visits and self-tests.
void noteDays(const Fact &fact, std::vector<QDate> &days)
{
    const auto *visit = fact.as<VisitFact>();
    if (!visit && !fact.as<SelfTestFact>())
        return;
    days.push_back(fact.at.localDate());
    for (const auto &moment :
         {visit ? visit->arrived : std::nullopt, visit ? visit->left : std::nullopt})
        if (moment)
            days.push_back(moment->localDate());
}

} // namespace

Result<void> refreshOrdersOnVisits(Records &records, Transaction &transaction,
                                   const ServiceOrder &order, const std::vector<Fact> &facts)
{
    if (premisesKey(order.premises).isEmpty())
        return {};
    std::vector<QDate> days;
    for (const Fact &fact : facts) {
        noteDays(fact, days);
        const auto *voiding = fact.as<VoidFact>();
        if (!voiding)
            continue;
        LOOPWRIGHT_ASSIGN(const auto voided, FactStore(transaction.database()).find(voiding->fact));
        if (voided)
            noteDays(*voided, days);
    }
    if (days.empty())
        return {};
    const auto [first, last] = std::minmax_element(days.begin(), days.end());
    LOOPWRIGHT_ASSIGN(
        const auto others,
        FactStore(transaction.database()).otherOrdersAtPremises(order, {*first, *last}));
    for (const QString &number : others)
        LOOPWRIGHT_TRY(refreshState(records, transaction, number));
    return {};
}

namespace {

Result<void> refreshConcerned(Records &records, Transaction &transaction, const ServiceOrder &order,
                              const PendingEvent &pending)
{
    const HazardStore hazards(transaction.database());
    LOOPWRIGHT_ASSIGN(
        const auto concerned,
        hazards.openOrdersConcerned(
            order.number, {order.office, pairIdentity(order.pair), premisesKey(order.premises)}));
    for (const QString &number : concerned) {
        LOOPWRIGHT_ASSIGN(const auto other, OrderStore(transaction.database()).get(number));
        LOOPWRIGHT_ASSIGN(
            const auto onPair,
            hazards.ordersOnPairs(number, other.order.office, {pairIdentity(other.order.pair)}));
        LOOPWRIGHT_ASSIGN(const auto nearby, hazards.ordersAtPremises(other.order));
        if (!onPair.isEmpty() || !nearby.isEmpty())
            LOOPWRIGHT_TRY(refreshState(records, transaction, number, pending));
    }
    return {};
}

} // namespace

Result<void> refreshOrdersConcerned(Records &records, Transaction &transaction,
                                    const ServiceOrder &order, const std::vector<Fact> &facts,
                                    const PendingEvent &pending)
{
    const bool ofHazards = std::ranges::any_of(facts, [](const Fact &fact) {
        return fact.as<SafetyFact>() || fact.as<HazardClosedFact>();
    });
    return ofHazards ? refreshConcerned(records, transaction, order, pending) : Result<void>();
}

Result<void> refreshOrdersOfHazards(Records &records, Transaction &transaction,
                                    const ServiceOrder &order)
{
    LOOPWRIGHT_ASSIGN(const auto pairs, HazardStore(transaction.database()).pairsOf(order.number));
    return pairs.isEmpty() ? Result<void>() : refreshConcerned(records, transaction, order, {});
}

Result<void> refreshOpenOrders(Records &records, Transaction &transaction, const QString &version)
{
    LOOPWRIGHT_TRY(MetaStore::putBoardLimits(transaction, version));
    QStringList numbers;
    LOOPWRIGHT_TRY(OrderStore(records.database()).eachOpen([&](const StoredOrder &stored) {
        numbers << stored.order.number;
        return Result<void>();
    }));
    for (const QString &number : std::as_const(numbers))
        LOOPWRIGHT_TRY(refreshState(records, transaction, number));
    return {};
}

} // namespace loopwright
