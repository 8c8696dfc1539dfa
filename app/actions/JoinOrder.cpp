#include "app/actions/JoinOrder.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/BundleOrders.h"
#include "app/actions/Events.h"
#include "app/actions/JoinConflicts.h"
#include "app/actions/JoinSeals.h"
#include "app/actions/JoinValues.h"
#include "app/actions/VanWarnings.h"
#include "db/ConflictStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <algorithm>
#include <map>

namespace loopwright {

namespace {

tl::unexpected<Error> refused(const char *code, const QString &why)
{
    return failure(ErrorCode::Refused, why, code);
}

Text forkSentence(const QString &station)
{
    return Text(QT_TRANSLATE_NOOP(
                    "core", "Station %1 tells another history than before: an older copy of its "
                            "records was put in their place, or they are in use twice. Have it "
                            "restored from a backup, which gives it a new tag, and added again."))
        .arg(station);
}

/// The chain that the van tells must go on where it ended (`known`), and hold together.
Result<void> checkChain(const std::vector<Event> &known, const Joining &joining)
{
    const QString subject = circuitSubject(joining.entry.circuit);
    const auto &events = joining.entry.events;
    if (events.empty())
        return refused("broken_chain", "It tells nothing of what was done in the van.");
    const qint64 first = events.front().event.sequence;
    if (first > qint64(known.size()) + 1)
        return refused("earlier_missing",
                       QString("It goes on from event %1 of the van, and only %2 are here: deliver "
                               "the bundle before it, then this one again.")
                           .arg(first - 1)
                           .arg(known.size()));
    QString before = first > 1 ? known[std::size_t(first - 2)].digest : QString();
    qint64 sequence = first;
    for (const ForeignEvent &each : events) {
        const Event &event = each.event;
        if (each.station != joining.van.tag || event.subject != subject ||
            event.sequence != sequence || event.computedDigest() != event.digest)
            return refused("broken_chain",
                           QString("Event %1 is not what its digest says.").arg(sequence));
        if (sequence <= qint64(known.size()) &&
            known[std::size_t(sequence - 1)].digest != event.digest)
            return refused("forked", forkSentence(joining.van.name).english());
        if (event.previous != before)
            return refused("broken_chain",
                           QString("Event %1 does not follow the one before.").arg(sequence));
        before = event.digest;
        ++sequence;
    }
    return {};
}

/// Tells the chain of an order that something was noticed of it as nothing of it was taken in.
Event noticed(const Records &records, const ServiceOrder &order,
              const std::vector<StationConflict> &conflicts, const QString &bundle)
{
    QStringList ids, codes;
    for (const StationConflict &each : conflicts) {
        ids << each.id;
        codes << toText(each.code);
    }
    codes.removeDuplicates();
    return orderEvent(records, order, "conflict_noticed",
                      {{"conflicts", QJsonArray::fromStringList(ids)},
                       {"codes", QJsonArray::fromStringList(codes)},
                       {"bundle", bundle}});
}

class OrderJoining
{
public:
    OrderJoining(Records &records, Transaction &transaction, const Joining &joining)
        : m_records(records)
        , m_transaction(transaction)
        , m_joining(joining)
        , m_entry(joining.entry)
    {
        m_joined.order = m_entry.number;
    }

    Result<JoinedOrder> run();

private:
    Result<void> tellClock(const AddedParts &parts);
    Result<void> noteFork(const AddedParts &parts);
    Result<QStringList> openConflicts() const;
    Result<bool> wasJoined() const;
    void tell(const char *code, Text reason);
    const Database &database() const { return m_transaction.database(); }

    Records &m_records;
    Transaction &m_transaction;
    const Joining &m_joining;
    const BundledOrder &m_entry;
    JoinedOrder m_joined;
    std::vector<Fact> m_facts; ///< all that it brings
};

void OrderJoining::tell(const char *code, Text reason)
{
    m_joined.findings.push_back({Severity::Warning, code, std::move(reason), {}, {}, 0});
}

Result<QStringList> OrderJoining::openConflicts() const
{
    LOOPWRIGHT_ASSIGN(const auto all, ConflictStore(database()).ofOrder(m_entry.number));
    QStringList open;
    for (const StationConflict &conflict : all)
        if (conflict.isOpen())
            open << conflict.id;
    return open;
}

/// Nothing is refused by a clock; that one is wrong is told.
Result<void> OrderJoining::tellClock(const AddedParts &parts)
{
    LOOPWRIGHT_ASSIGN(const auto carried, StationStore(database()).carried(m_entry.number));
    const auto taking = std::ranges::find(carried, m_joining.van.tag, &CarriedOrder::station);
    const bool behind =
        taking != carried.end() && std::ranges::any_of(parts.facts, [&](const Fact &fact) {
            return !fact.as<VoidFact>() && fact.at < taking->since;
        });
    if (behind)
        tell("clock_behind",
             Text(QT_TRANSLATE_NOOP("core", "Some of it is dated before %1 took the order along: "
                                            "its clock is behind, or it was entered late."))
                 .arg(m_joining.van.name));
    return {};
}

/// As far as its circuit's chain tells now. That the chain is here says less: another order of the
/// circuit may have brought it.
Result<bool> OrderJoining::wasJoined() const
{
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database()).ofOrder(m_entry.number));
    const qint64 last = m_entry.events.back().event.sequence;
    return std::ranges::any_of(events, [&](const Event &event) {
        return event.kind == joinedKind &&
               event.detail.value("station").toString() == m_joining.van.tag &&
               event.detail.value("events").toInteger() >= last;
    });
}

/// The work is taken in, for its chain goes on; that somebody else works as the same station must
/// be known before the two meet in one circuit.
Result<void> OrderJoining::noteFork(const AddedParts &parts)
{
    for (const CertificateTwice &each : parts.twice)
        tell("certificate_twice", each.sentence());
    if (m_joining.fork.isEmpty())
        return {};
    tell("forked", forkSentence(m_joining.van.name));
    LOOPWRIGHT_TRY(drawConflict(m_records, m_transaction, m_entry.number, ConflictCode::Forked,
                                m_joining.van.tag, m_joining.fork));
    return {};
}

Result<JoinedOrder> OrderJoining::run()
{
    LOOPWRIGHT_ASSIGN(
        const auto known,
        ForeignStore(database()).chainOf(m_joining.van.tag, circuitSubject(m_entry.circuit)));
    LOOPWRIGHT_TRY(checkChain(known, m_joining));
    LOOPWRIGHT_TRY(checkSeals(database(), known, m_joining));
    LOOPWRIGHT_ASSIGN(m_facts, factsIn(m_entry, m_joining.place));
    LOOPWRIGHT_ASSIGN(const int told, addForeignEvents(m_records, m_transaction, m_entry));
    LOOPWRIGHT_ASSIGN(const bool isHere, told == 0 ? wasJoined() : Result<bool>(false));
    if (isHere) {
        m_joined.verdict = BundleVerdict::AlreadyThere;
        LOOPWRIGHT_ASSIGN(m_joined.conflicts, openConflicts());
        for (const Fact &fact : m_facts)
            m_joined.alreadyThere << fact.id;
        LOOPWRIGHT_ASSIGN(const auto here, OrderStore(database()).get(m_entry.number));
        LOOPWRIGHT_ASSIGN(const auto around, hazardsAround(m_records, here));
        m_joined.tellFirst(hazardWarnings(around.open));
        return m_joined;
    }
    LOOPWRIGHT_ASSIGN(auto values, joinValues(m_records, m_transaction, m_joining, m_facts));
    LOOPWRIGHT_ASSIGN(auto parts, addParts(m_records, m_transaction, m_entry, m_facts,
                                           m_joining.van.tag, m_joining.place));
    m_joined.added = parts.added;
    m_joined.alreadyThere = parts.alreadyThere;
    m_joined.certificates = parts.certificates;
    for (Finding &finding : values.kept)
        m_joined.findings.push_back(std::move(finding));
    LOOPWRIGHT_TRY(tellClock(parts));
    LOOPWRIGHT_TRY(drawConflicts(m_records, m_transaction,
                                 {m_joining, m_facts, values.before, values.known}, parts));
    LOOPWRIGHT_TRY(noteFork(parts));
    LOOPWRIGHT_ASSIGN(m_joined.conflicts, openConflicts());
    if (!m_joining.keep)
        LOOPWRIGHT_TRY(StationStore::bringHome(m_transaction, m_entry.number, m_joining.van.tag));
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database()).get(m_entry.number));
    const Event &last = m_entry.events.back().event;
    QJsonObject detail{{"station", m_joining.van.tag},
                       {"bundle", m_joining.bundle},
                       {"events", last.sequence},
                       {"head", last.digest},
                       {"facts", parts.added.size()}};
    const QStringList afterEnd =
        stored.status != OrderStatus::Open ? idsOf(parts.facts) : QStringList();
    if (stored.status != OrderStatus::Open)
        detail.insert("after_end", QJsonArray::fromStringList(afterEnd));
    if (!values.events.empty())
        LOOPWRIGHT_TRY(tellHeldOrders(m_records, m_transaction, values.events));
    values.events.push_back(orderEvent(m_records, stored.order, joinedKind, detail));
    std::map<QString, std::vector<StationConflict>> elsewhere; // by order
    for (const StationConflict &each : parts.elsewhere)
        elsewhere[each.order].push_back(each);
    for (const auto &[order, conflicts] : elsewhere) {
        LOOPWRIGHT_ASSIGN(const auto other, OrderStore(database()).get(order));
        LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database()).ofOrder(order));
        LOOPWRIGHT_TRY(refreshOrdersOnVisits(m_records, m_transaction, other.order, facts));
        LOOPWRIGHT_TRY(refreshOrdersOfHazards(m_records, m_transaction, other.order));
        values.events.push_back(noticed(m_records, other.order, conflicts, m_joining.bundle));
    }
    LOOPWRIGHT_ASSIGN(const auto hazards, refreshState(m_records, m_transaction, m_entry.number,
                                                       {.afterEnd = afterEnd}));
    m_joined.isNew = !values.before;
    if (values.before)
        for (Finding &finding : changeWarnings(values.before->order, stored.order))
            m_joined.findings.push_back(std::move(finding));
    m_joined.tellFirst(hazardWarnings(hazards));
    // Also what was here before: it may be in dispute now.
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(m_records, m_transaction, stored.order, m_facts));
    LOOPWRIGHT_TRY(refreshOrdersOfHazards(m_records, m_transaction, stored.order));
    LOOPWRIGHT_TRY(m_transaction.commit(values.events));
    return m_joined;
}

/// Nothing of the order is in but what shall be known of its station.
Result<void> noteForkAlone(Records &records, const Joining &joining)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const Database &database = transaction.database();
    const BundledOrder &entry = joining.entry;
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).find(entry.number));
    if (!stored || stored->uuid != entry.uuid)
        return {};
    LOOPWRIGHT_ASSIGN(const auto known, ForeignStore(database).chainOf(
                                            joining.van.tag, circuitSubject(entry.circuit)));
    const auto event = std::ranges::find_if(entry.events, [&known](const ForeignEvent &each) {
        const auto at = std::size_t(each.event.sequence);
        return at <= known.size() && known[at - 1].digest != each.event.digest;
    });
    if (event == entry.events.end())
        return {};
    const QJsonObject where{{"chain", event->event.subject}, {"event", event->event.sequence}};
    LOOPWRIGHT_ASSIGN(const auto before, ConflictStore(database).ofOrder(entry.number));
    const QString id =
        StationConflict::idOf(ConflictCode::Forked, entry.number, joining.van.tag, where);
    if (std::ranges::find(before, id, &StationConflict::id) != before.end())
        return {};
    LOOPWRIGHT_ASSIGN(const auto drawn, drawConflict(records, transaction, entry.number,
                                                     ConflictCode::Forked, joining.van.tag, where));
    LOOPWRIGHT_TRY(refreshState(records, transaction, entry.number));
    return transaction.commit(noticed(records, stored->order, {drawn}, joining.bundle));
}

Result<JoinedOrder> joined(Records &records, const Joining &joining)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    return OrderJoining(records, transaction, joining).run();
}

} // namespace

Result<JoinedOrder> joinOrder(Records &records, const Joining &joining)
{
    auto done = joined(records, joining);
    if (!done && done.error().place == u"forked")
        LOOPWRIGHT_TRY(noteForkAlone(records, joining));
    return done;
}

} // namespace loopwright
