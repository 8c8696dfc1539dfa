#include "app/actions/JoinOrder.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/BundleOrders.h"
#include "app/actions/Events.h"
#include "app/actions/OrderIntake.h"
#include "core/acceptance/PairInForce.h"
#include "core/acceptance/Proof.h"
#include "db/AssignmentStore.h"
#include "db/CertificateStore.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

tl::unexpected<Error> refused(const char *code, const QString &why)
{
    return failure(ErrorCode::Refused, why, code);
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
            return refused("forked",
                           QString("Station %1 told another event %2 of %3 before: its records "
                                   "were replaced by an older copy. Have it restored from a "
                                   "backup, which gives it a new tag, and added again.")
                               .arg(joining.van.name)
                               .arg(sequence)
                               .arg(subject));
        if (event.previous != before)
            return refused("broken_chain",
                           QString("Event %1 does not follow the one before.").arg(sequence));
        before = event.digest;
        ++sequence;
    }
    return {};
}

/// Whatever comes must be sealed by an event of the chain.
Result<void> checkSeals(const std::vector<Event> &known, const Joining &joining)
{
    QSet<QPair<QString, QString>> sealed; // kind of row, digest
    const auto note = [&sealed](const Event &event) {
        for (const Seal &seal : event.seals())
            sealed.insert({seal.row, seal.digest});
    };
    for (const Event &event : known)
        note(event);
    for (const ForeignEvent &each : joining.entry.events)
        note(each.event);
    const auto check = [&](const char *row, const QByteArray &content) -> Result<void> {
        if (sealed.contains({row, sha256Hex(content)}))
            return {};
        return refused("broken_chain",
                       QString("No event of the van tells of a %1 that it brings.").arg(row));
    };
    for (const BundledFact &fact : joining.entry.facts)
        LOOPWRIGHT_TRY(check("fact", fact.content));
    for (const BundledDecision &decision : joining.entry.decisions) {
        LOOPWRIGHT_TRY(check("decision", decision.result));
        LOOPWRIGHT_TRY(check("decision_input", decision.input));
    }
    for (const BundledCertificate &certificate : joining.entry.certificates)
        LOOPWRIGHT_TRY(check("certificate", certificate.content));
    return {};
}

bool isEvidence(const Fact &fact)
{
    return provenBy(fact) != Proves::Nothing;
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
    Result<void> takeValues();
    Result<void> takeNew(const ServiceOrder &order);
    Result<void> mergeValues(const ServiceOrder &van, const ServiceOrder &base);
    Result<void> apply(const OrderFields &fields);
    Result<void> tellClock(const AddedParts &parts);
    Result<void> findConflicts(const AddedParts &parts);
    Result<bool> othersWorkedUnseen(const AddedParts &parts) const;
    Result<void> addConflict(ConflictCode code, const QString &station,
                             const QJsonObject &content = {});
    const Database &database() const { return m_transaction.database(); }

    Records &m_records;
    Transaction &m_transaction;
    const Joining &m_joining;
    const BundledOrder &m_entry;
    JoinedOrder m_joined;
    std::vector<Fact> m_facts;           ///< all that it brings
    std::optional<StoredOrder> m_before; ///< the order as it was here
    std::vector<Event> m_events;
    QJsonObject m_differing; ///< columns in which evidence is held against other values
    QJsonArray m_what;
    bool m_valueInUse = false;
};

Result<void> OrderJoining::takeNew(const ServiceOrder &order)
{
    LOOPWRIGHT_ASSIGN(const auto taken, takeOrder(m_records, m_transaction, order, std::nullopt,
                                                  false, {m_entry.uuid, m_entry.circuitUuid}));
    m_events.push_back(taken.event);
    m_valueInUse = m_valueInUse || !taken.findings.empty();
    return {};
}

Result<void> OrderJoining::apply(const OrderFields &fields)
{
    LOOPWRIGHT_ASSIGN(const auto reading, readFields(m_records, fields));
    if (worst(reading.malformed) == Severity::Error)
        return {};
    LOOPWRIGHT_ASSIGN(auto taken, takeOrder(m_records, m_transaction, reading.order, m_before));
    // What the change makes old, and when, the van's own event says.
    taken.event.detail.remove("retires");
    m_events.push_back(taken.event);
    m_valueInUse = m_valueInUse || !taken.findings.empty();
    return {};
}

/// Columns that only the van changed are taken over; where both did, the office's value stands, and
/// if evidence is held against it, somebody decides.
Result<void> OrderJoining::mergeValues(const ServiceOrder &van, const ServiceOrder &base)
{
    const OrderFields was = base.fields(), there = van.fields();
    OrderFields here = m_before->order.fields();
    bool changed = false;
    QStringList columns = was.keys() + there.keys();
    columns.removeDuplicates();
    for (const QString &column : std::as_const(columns)) {
        if (there.value(column) == was.value(column) || here.value(column) != was.value(column))
            continue;
        if (there.value(column).isEmpty())
            here.remove(column);
        else
            here.insert(column, there.value(column));
        changed = true;
    }
    if (changed && m_before->status == OrderStatus::Open)
        LOOPWRIGHT_TRY(apply(here));
    LOOPWRIGHT_ASSIGN(const auto reading, readFields(m_records, here));
    for (const ChangedWhat what : whatChanged(van, reading.order))
        m_what << toText(what);
    const QStringList now = there.keys() + here.keys();
    for (const QString &column : now) {
        if (there.value(column) == here.value(column))
            continue;
        OrderFields one = here;
        one.insert(column, there.value(column));
        LOOPWRIGHT_ASSIGN(const auto other, readFields(m_records, one));
        if (!whatChanged(other.order, reading.order).empty())
            m_differing.insert(column, QJsonArray{there.value(column), here.value(column)});
    }
    return {};
}

Result<void> OrderJoining::takeValues()
{
    LOOPWRIGHT_ASSIGN(const auto van, orderIn(m_entry, m_entry.content, m_joining.place));
    LOOPWRIGHT_ASSIGN(m_before, OrderStore(database()).find(m_entry.number));
    if (!m_before && !m_entry.base.isEmpty())
        return refused("unknown_order", QString("Order %1 was taken along from this office, and "
                                                "is not in its records: an older copy of them is "
                                                "in use.")
                                            .arg(m_entry.number));
    if (!m_before)
        return takeNew(van);
    if (m_before->uuid != m_entry.uuid)
        return refused("number_in_use",
                       QString("The van made an order %1 of its own, and another one has that "
                               "number here: give it another number.")
                           .arg(m_entry.number));
    if (m_before->order.circuit != van.circuit)
        return refused("unknown_order", QString("Order %1 is of circuit %2 here.")
                                            .arg(m_entry.number, m_before->order.circuit));
    if (m_entry.base.isEmpty())
        return {};
    LOOPWRIGHT_ASSIGN(const auto base, orderIn(m_entry, m_entry.base, m_joining.place));
    return mergeValues(van, base);
}

Result<void> OrderJoining::addConflict(ConflictCode code, const QString &station,
                                       const QJsonObject &content)
{
    const QString id = StationConflict::idOf(code, m_entry.number, station, content);
    LOOPWRIGHT_ASSIGN(const auto known, ConflictStore(database()).find(id));
    if (!known)
        LOOPWRIGHT_TRY(ConflictStore::add(
            m_transaction, {id, m_entry.number, code, station, content, m_records.now(), {}}));
    if (!known || known->isOpen())
        m_joined.conflicts << id;
    return {};
}

/// Somebody else worked on the order, and this van did not know of it.
Result<bool> OrderJoining::othersWorkedUnseen(const AddedParts &parts) const
{
    if (std::ranges::none_of(parts.facts, isEvidence))
        return false;
    LOOPWRIGHT_ASSIGN(const auto origins, ForeignStore(database()).originsOf(m_entry.number));
    QSet<QString> own(m_entry.seen.begin(), m_entry.seen.end());
    for (const FactOrigin &origin : origins)
        if (origin.station == m_joining.van.tag)
            own.insert(origin.fact);
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database()).ofOrder(m_entry.number));
    return std::ranges::any_of(
        facts, [&own](const Fact &fact) { return isEvidence(fact) && !own.contains(fact.id); });
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
        m_joined.findings.push_back(
            {Severity::Warning,
             "clock_behind",
             Text(QT_TRANSLATE_NOOP("core", "Some of it is dated before %1 took the order along: "
                                            "its clock is behind, or it was entered late."))
                 .arg(m_joining.van.name),
             {},
             {},
             0});
    return {};
}

Result<void> OrderJoining::findConflicts(const AddedParts &parts)
{
    const QString &tag = m_joining.van.tag;
    if (!m_differing.isEmpty() && std::ranges::any_of(m_facts, isEvidence))
        LOOPWRIGHT_TRY(addConflict(ConflictCode::OrderChanged, tag,
                                   {{"columns", m_differing}, {"what", m_what}}));
    if (m_before && m_before->status != OrderStatus::Open && !parts.added.isEmpty())
        LOOPWRIGHT_TRY(addConflict(ConflictCode::OrderClosed, tag));
    LOOPWRIGHT_ASSIGN(const bool others, othersWorkedUnseen(parts));
    if (others)
        LOOPWRIGHT_TRY(addConflict(ConflictCode::TwoStations, {}));
    if (m_valueInUse) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database()).get(m_entry.number));
        LOOPWRIGHT_ASSIGN(const auto held, AssignmentStore(database()).conflictsOf(stored.order));
        QJsonArray values;
        for (const Conflict &each : held)
            values << each.toJson();
        LOOPWRIGHT_TRY(addConflict(ConflictCode::ValueInUse, tag, {{"values", values}}));
    }
    for (const Fact &fact : parts.differing)
        LOOPWRIGHT_TRY(addConflict(
            ConflictCode::FactDiffers, tag,
            {{"fact", fact.id}, {"content", QString::fromUtf8(canonicalJson(fact.toJson()))}}));
    if (parts.ahead)
        LOOPWRIGHT_TRY(addConflict(ConflictCode::ClockAhead, tag));
    if (!parts.certificates.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto all, CertificateStore(database()).ofOrder(m_entry.number));
        const bool another = std::ranges::any_of(all, [&](const StoredCertificate &each) {
            return std::ranges::find(m_entry.certificates, each.number,
                                     &BundledCertificate::number) == m_entry.certificates.end();
        });
        if (another)
            LOOPWRIGHT_TRY(addConflict(ConflictCode::CertificateSuperseded, tag));
    }
    return {};
}

Result<JoinedOrder> OrderJoining::run()
{
    LOOPWRIGHT_ASSIGN(
        const auto known,
        ForeignStore(database()).chainOf(m_joining.van.tag, circuitSubject(m_entry.circuit)));
    LOOPWRIGHT_TRY(checkChain(known, m_joining));
    LOOPWRIGHT_TRY(checkSeals(known, m_joining));
    LOOPWRIGHT_ASSIGN(m_facts, factsIn(m_entry, m_joining.place));
    LOOPWRIGHT_ASSIGN(const int told, addForeignEvents(m_records, m_transaction, m_entry));
    if (told == 0) {
        m_joined.verdict = BundleVerdict::AlreadyThere;
        LOOPWRIGHT_ASSIGN(const auto open, ConflictStore(database()).ofOrder(m_entry.number));
        for (const StationConflict &conflict : open)
            if (conflict.isOpen())
                m_joined.conflicts << conflict.id;
        for (const Fact &fact : m_facts)
            m_joined.alreadyThere << fact.id;
        return m_joined;
    }
    LOOPWRIGHT_TRY(takeValues());
    LOOPWRIGHT_ASSIGN(const auto parts, addParts(m_records, m_transaction, m_entry, m_facts,
                                                 m_joining.van.tag, m_joining.place));
    m_joined.added = parts.added;
    m_joined.alreadyThere = parts.alreadyThere;
    m_joined.certificates = parts.certificates;
    LOOPWRIGHT_TRY(tellClock(parts));
    LOOPWRIGHT_TRY(findConflicts(parts));
    if (!m_joining.keep)
        LOOPWRIGHT_TRY(StationStore::bringHome(m_transaction, m_entry.number, m_joining.van.tag));
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database()).get(m_entry.number));
    const Event &last = m_entry.events.back().event; // new, or nothing would be
    QJsonObject detail{{"station", m_joining.van.tag},
                       {"bundle", m_joining.bundle},
                       {"events", last.sequence},
                       {"head", last.digest},
                       {"facts", parts.added.size()}};
    if (stored.status != OrderStatus::Open)
        detail.insert("after_end", QJsonArray::fromStringList(parts.added));
    m_events.push_back(orderEvent(m_records, stored.order, joinedKind, detail));
    LOOPWRIGHT_TRY(refreshState(
        m_records, m_transaction, m_entry.number,
        {.afterEnd = stored.status != OrderStatus::Open ? parts.added : QStringList()}));
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(m_records, m_transaction, stored.order, parts.facts));
    LOOPWRIGHT_TRY(refreshOrdersConcerned(m_records, m_transaction, stored.order, parts.facts, {}));
    LOOPWRIGHT_TRY(m_transaction.commit(m_events));
    return m_joined;
}

} // namespace

Result<JoinedOrder> joinOrder(Records &records, const Joining &joining)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    return OrderJoining(records, transaction, joining).run();
}

} // namespace loopwright
