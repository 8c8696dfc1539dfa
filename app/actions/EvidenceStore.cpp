#include "app/actions/EvidenceStore.h"

#include "app/actions/BulkEvents.h"
#include "app/actions/ToldFacts.h"
#include "app/actions/VisitsElsewhere.h"
#include "core/acceptance/PairInForce.h"
#include "core/acceptance/Proof.h"
#include "core/order/Claims.h"
#include "core/order/OfficeChange.h"
#include "db/AssignmentStore.h"
#include "db/ConflictStore.h"
#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"
#include "db/HazardStore.h"
#include "db/InstrumentStore.h"
#include "db/StationStore.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

QStringList supervisedIn(const QJsonObject &detail)
{
    QStringList ids;
    for (const QJsonValue &id : detail.value("by_supervisor").toArray())
        ids << id.toString();
    return ids;
}

void takeBack(std::vector<OrderChange> &changes, const QJsonObject &detail)
{
    const auto from = Moment::parse(detail.value("takes_back_from").toString());
    if (!from)
        return;
    std::erase_if(changes, [&](const OrderChange &change) {
        return change.at >= *from && change.what &&
               detail.value("takes_back").toArray().contains(toText(*change.what));
    });
}

namespace {

/// The order by which the circuit worked before this one.
Result<std::optional<ServiceOrder>> workedBefore(const Database &database,
                                                 const StoredOrder &stored)
{
    const OrderStore orders(database);
    LOOPWRIGHT_ASSIGN(const auto before, stored.status == OrderStatus::Completed
                                             ? orders.workedBefore(stored.order.number)
                                             : orders.workingOn(stored.order.circuit));
    return before ? std::optional(before->order) : std::nullopt;
}

struct OrderEvents
{
    /// What other stations wrote of the order stands before what was written here: it is asked
    /// which changes there were and when, not in which row they stand.
    std::vector<Event> events;
    bool fromElsewhere = false; ///< another station told of it
};
Result<OrderEvents> eventsOfOrder(const Database &database, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto foreign, ForeignStore(database).eventsOfOrder(order));
    LOOPWRIGHT_ASSIGN(const auto told, StationStore(database).told(order));
    OrderEvents found{{}, !foreign.empty() || !told.empty()};
    for (const ForeignEvent &each : foreign)
        if (each.event.kind != u"order_completed") // that is for the office alone to do
            found.events.push_back(each.event);
    LOOPWRIGHT_ASSIGN(const auto own, EventStore(database).ofOrder(order));
    found.events.insert(found.events.end(), own.begin(), own.end());
    return found;
}

/// What stations disagree about. Evidence that is set aside is told as such. What proves nothing by
/// itself (a change, a void, a closing) would go on to rule other evidence, or close a hazard, by
/// what is in doubt: it is left out of the facts.
Result<void> setAsideIn(const Database &database, const QString &order,
                        const std::vector<FactOrigin> &tellers, std::vector<Fact> &facts,
                        std::vector<SetAside> &setAsideHere, QMap<QString, QString> &toldUnderHere)
{
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(order));
    const std::vector<SetAside> aside = setAside(facts, tellers, conflicts);
    setAsideHere.insert(setAsideHere.end(), aside.begin(), aside.end());
    QSet<QString> ids;
    for (const SetAside &each : aside)
        ids.insert(each.fact);
    std::erase_if(facts,
                  [&ids](const Fact &fact) { return !isEvidence(fact) && ids.contains(fact.id); });
    const QHash<QString, QString> told = toldUnder(conflicts);
    for (const Fact &fact : facts)
        if (told.contains(fact.id))
            toldUnderHere.insert(fact.id, told.value(fact.id));
    return {};
}

/// On which pair a van made each fact; where stations name several, one that is not the order's,
/// so that it counts for nothing.
QHash<QString, QString> pairsTold(const std::vector<FactOrigin> &tellers, const QString &own)
{
    QHash<QString, QString> pairs;
    for (const FactOrigin &teller : tellers)
        if (!pairs.contains(teller.fact) || isSamePair(pairs.value(teller.fact), own))
            pairs.insert(teller.fact, teller.pair);
    return pairs;
}

/// What stations disagree about, and on which pair a van made what names none.
Result<void> readOtherStations(const Database &database, DecisionInput &input)
{
    const QString &order = input.order.number;
    LOOPWRIGHT_ASSIGN(const auto tellers, ForeignStore(database).tellersOf(order));
    LOOPWRIGHT_TRY(
        setAsideIn(database, order, tellers, input.facts, input.setAside, input.toldUnder));
    const QHash<QString, QString> pairs = pairsTold(tellers, input.order.pair);
    for (const Fact &fact : input.facts)
        if (const QString pair = pairs.value(fact.id);
            fact.pair.isEmpty() && !pair.isEmpty() && isEvidence(fact))
            input.measuredOn.insert(fact.id, pair);
    return {};
}

/// What the order's own history says of its evidence: when it was taken in, what its changes
/// retire, what was recorded when it was no longer open. A completed order is judged by the numbers
/// that it was completed with: a change of all lines of its office renames the line afterwards, and
/// unmakes no acceptance. What was taken back of these changes is as if it had never been.
void readHistory(const std::vector<Event> &events, DecisionInput &input)
{
    const QSet<QString> takenBack = bulk::takenBackIn(events);
    bool completed = false;
    OrderFields before; // a later change of all lines: what the columns held
    for (const Event &event : events) {
        if (event.kind == bulk::undone || takenBack.contains(bulk::idOf(event)))
            continue;
        completed = completed || event.kind == "order_completed";
        if (completed && event.kind == bulk::changed) {
            const OrderFields columns = bulk::columnsBefore(event);
            for (auto column = columns.begin(); column != columns.end(); ++column)
                if (!before.contains(column.key()))
                    before.insert(column.key(), *column);
        }
        // One that a van made is taken in once more when it comes home: what stations tell is
        // first.
        if (event.kind == "order_taken" && !input.takenIn)
            input.takenIn = event.at;
        for (const QJsonValue &what : event.detail.value("retires").toArray())
            input.changes.push_back({fromText<ChangedWhat>(what.toString()), event.at});
        if (const QString name = event.detail.value("also_named").toString(); !name.isEmpty())
            input.changes.push_back({std::nullopt, event.at, name});
        for (const QJsonValue &id : event.detail.value("after_end").toArray())
            input.afterEnd << id.toString();
        takeBack(input.changes, event.detail);
        input.bySupervisor << supervisedIn(event.detail);
    }
    input.order = withValues(input.order, before);
}

/// What an order of these records says of hazards to others.
Result<HazardCards> ownHazardCards(const Database &database, const StoredOrder &stored)
{
    const QString &order = stored.order.number;
    HazardCards cards;
    LOOPWRIGHT_ASSIGN(auto facts, FactStore(database).ofOrder(order));
    LOOPWRIGHT_ASSIGN(const auto told, eventsOfOrder(database, order));
    std::erase_if(facts, [](const Fact &fact) {
        return !fact.as<SafetyFact>() && !fact.as<HazardClosedFact>() && !fact.as<VoidFact>();
    });
    QHash<QString, QString> pairs;
    if (told.fromElsewhere) { // most orders never leave the office
        LOOPWRIGHT_ASSIGN(const auto tellers, ForeignStore(database).tellersOf(order));
        LOOPWRIGHT_TRY(
            setAsideIn(database, order, tellers, facts, cards.setAside, cards.toldUnder));
        pairs = pairsTold(tellers, stored.order.pair);
    }
    QSet<QString> ids;
    for (const Fact &fact : facts)
        if (fact.as<SafetyFact>() || fact.as<HazardClosedFact>()) {
            cards.facts.push_back(fact);
            if (fact.pair.isEmpty()) // on the pair of its own order, which nobody asks later
                cards.facts.back().pair = pairs.value(fact.id);
            if (cards.facts.back().pair.isEmpty())
                cards.facts.back().pair = stored.order.pair;
            ids.insert(fact.id);
        }
    for (const Fact &fact : facts)
        if (const auto *voiding = fact.as<VoidFact>(); voiding && ids.contains(voiding->fact))
            cards.facts.push_back(fact);
    for (const Event &event : told.events)
        cards.bySupervisor << supervisedIn(event.detail);
    return cards;
}

void addCards(const HazardCards &cards, std::vector<Fact> &facts, DecisionInput &input)
{
    facts.insert(facts.end(), cards.facts.begin(), cards.facts.end());
    input.bySupervisor << cards.bySupervisor;
    input.setAside.insert(input.setAside.end(), cards.setAside.begin(), cards.setAside.end());
    input.toldUnder.insert(cards.toldUnder);
}

/// On whose pair a hazard nearby may have been closed.
Result<QStringList> ordersOnPairOf(const Database &database, const QString &order)
{
    const HazardStore hazards(database);
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).find(order));
    if (stored)
        return hazards.ordersOnPairs(order, stored->order.office,
                                     {pairIdentity(stored->order.pair)});
    LOOPWRIGHT_ASSIGN(const auto told, hazards.told(order));
    return told ? hazards.ordersOnPairs(order, told->office, told->pairs)
                : Result<QStringList>(QStringList());
}

/// The hazards of the pair and of the premises that were read for other orders.
Result<void> readHazardsElsewhere(const EvidenceStore &evidence, const Database &database,
                                  DecisionInput &input)
{
    const HazardStore hazards(database);
    const QString &own = input.order.number;
    QStringList pairs;
    for (const QString &name : pairInForce(input, standingFacts(input.facts)))
        pairs << pairIdentity(name);
    // Its own hazards may have been closed on the pair that it had before.
    LOOPWRIGHT_ASSIGN(const auto noted, hazards.pairsOf(own));
    LOOPWRIGHT_ASSIGN(const auto onPair,
                      hazards.ordersOnPairs(own, input.order.office, pairs + noted));
    LOOPWRIGHT_ASSIGN(const auto nearby, hazards.ordersAtPremises(input.order));
    for (const QString &order : onPair) {
        LOOPWRIGHT_ASSIGN(const auto cards, evidence.hazardCardsOf(order));
        addCards(cards, input.pairCards, input);
    }
    // What was read for it since it was taken along, as the office told with another order.
    LOOPWRIGHT_ASSIGN(auto told, hazards.told(own));
    if (told) {
        std::erase_if(told->cards.facts, [&input](const Fact &fact) {
            return std::ranges::find(input.facts, fact.id, &Fact::id) != input.facts.end();
        });
        addCards(told->cards, input.pairCards, input);
    }
    QStringList closedThere;
    for (const QString &number : nearby) {
        LOOPWRIGHT_ASSIGN(const auto more, ordersOnPairOf(database, number));
        closedThere << more;
    }
    QStringList places = nearby + closedThere;
    places.removeDuplicates();
    places.removeAll(own);
    for (const QString &order : std::as_const(places)) {
        if (onPair.contains(order))
            continue;
        LOOPWRIGHT_ASSIGN(const auto cards, evidence.hazardCardsOf(order));
        addCards(cards, input.premisesCards, input);
    }
    input.bySupervisor.removeDuplicates();
    return {};
}

Result<QList<Instrument>> instrumentsOf(const Database &database, const std::vector<Fact> &facts)
{
    QSet<QString> keys;
    for (const Fact &fact : facts)
        keys.insert(fact.instrument);
    QStringList sorted(keys.begin(), keys.end());
    std::sort(sorted.begin(), sorted.end());
    QList<Instrument> list;
    for (const QString &key : sorted) {
        LOOPWRIGHT_ASSIGN(const auto instrument, InstrumentStore(database).find(key));
        if (instrument)
            list << *instrument;
    }
    return list;
}

} // namespace

Result<HazardCards> EvidenceStore::hazardCardsOf(const QString &order) const
{
    HazardCards cards;
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(m_database).find(order));
    if (stored) {
        LOOPWRIGHT_ASSIGN(cards, ownHazardCards(m_database, *stored));
    }
    LOOPWRIGHT_ASSIGN(const auto told, HazardStore(m_database).told(order));
    if (told)
        cards.add(told->cards);
    return cards;
}

Result<DecisionInput> EvidenceStore::of(const StoredOrder &stored, const QString &limitSet) const
{
    m_database.connection().foresee([&] { (void)gathered(stored, limitSet); });
    return gathered(stored, limitSet);
}

Result<DecisionInput> EvidenceStore::gathered(const StoredOrder &stored,
                                              const QString &limitSet) const
{
    const QString &orderNumber = stored.order.number;
    DecisionInput input;
    input.order = stored.order;
    input.limitSet = limitSet;
    LOOPWRIGHT_ASSIGN(const auto told, eventsOfOrder(m_database, orderNumber));
    readHistory(told.events, input);
    LOOPWRIGHT_ASSIGN(const auto working, workedBefore(m_database, stored));
    input.scope = scopeOf(input.order, working);
    if (stored.status == OrderStatus::Open) {
        LOOPWRIGHT_ASSIGN(auto conflicts, AssignmentStore(m_database).conflictsOf(input.order));
        input.conflicts = std::move(conflicts);
    }
    LOOPWRIGHT_ASSIGN(auto facts, FactStore(m_database).ofOrder(orderNumber));
    input.facts = std::move(facts);
    if (told.fromElsewhere)
        LOOPWRIGHT_TRY(readOtherStations(m_database, input));
    LOOPWRIGHT_ASSIGN(const auto others, visitsInOtherOrders(m_database, input.order, input.facts));
    SharedVisits shared = shareVisits(input.facts, others);
    input.visits = std::move(shared.visits);
    input.selfTests = std::move(shared.selfTests);
    LOOPWRIGHT_ASSIGN(auto instruments, instrumentsOf(m_database, input.facts));
    input.instruments = std::move(instruments);
    LOOPWRIGHT_TRY(readHazardsElsewhere(*this, m_database, input));
    return input;
}

} // namespace loopwright
