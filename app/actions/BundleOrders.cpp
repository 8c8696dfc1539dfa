#include "app/actions/BundleOrders.h"

#include "core/acceptance/Proof.h"
#include "core/certificate/CertificateNumber.h"
#include "db/CertificateStore.h"
#include "db/ConflictStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"
#include "db/MetaStore.h"
#include "db/StationStore.h"

#include <QHash>
#include <QJsonDocument>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

BundledDecision bundled(const StoredDecision &stored)
{
    const QJsonObject result = QJsonDocument::fromJson(stored.result).object();
    return {stored.id,
            result.value("outcome").toString(),
            result.value("limit_set").toString(),
            stored.at,
            stored.input,
            stored.result};
}

Result<BundledCertificate> bundled(const Database &database, const StoredCertificate &stored)
{
    BundledCertificate certificate{stored.number, stored.decision,
                                   stored.at,     canonicalJson(stored.content),
                                   stored.claims, {}};
    LOOPWRIGHT_ASSIGN(const auto issues, CertificateStore(database).issuesOf(stored.number));
    for (const CertificateIssue &issue : issues)
        certificate.issues.push_back({issue.fileSha256, issue.paper, issue.at});
    return certificate;
}

Result<BundledOrder> headOf(const Database &database, const StoredOrder &stored)
{
    LOOPWRIGHT_ASSIGN(const auto circuit, OrderStore(database).circuitUuid(stored.order.number));
    BundledOrder entry;
    entry.number = stored.order.number;
    entry.uuid = stored.uuid;
    entry.circuit = stored.order.circuit;
    entry.circuitUuid = circuit;
    entry.status = toText(stored.status);
    entry.content = canonicalJson(stored.order.toJson());
    return entry;
}

QHash<QString, FactOrigin> byFact(const std::vector<FactOrigin> &origins)
{
    QHash<QString, FactOrigin> known;
    for (const FactOrigin &origin : origins)
        known.insert(origin.fact, origin);
    return known;
}

/// The pair that the order had when each of its facts was recorded, by what its events say.
class PairsThen
{
public:
    PairsThen(const std::vector<Event> &events, const ServiceOrder &now)
    {
        QString pair = now.pair;
        for (auto event = events.rbegin(); event != events.rend(); ++event) {
            if (event->order != now.number)
                continue;
            for (const Seal &seal : event->seals())
                if (seal.row == u"fact")
                    m_pairs.insert(seal.id, pair);
            const QJsonArray change =
                event->detail.value("changes").toObject().value("pair").toArray();
            if (!change.isEmpty())
                pair = change.first().toString();
        }
    }
    QString of(const QString &fact) const { return m_pairs.value(fact); }

private:
    QHash<QString, QString> m_pairs;
};

/// What the events wrote, by kind of row and id.
QSet<QPair<QString, QString>> sealedBy(const std::vector<ForeignEvent> &events)
{
    QSet<QPair<QString, QString>> rows;
    for (const ForeignEvent &each : events)
        for (const Seal &seal : each.event.seals())
            rows.insert({seal.row, seal.id});
    return rows;
}

} // namespace

Result<BundledOrder> orderGoingOut(Records &records, const StoredOrder &stored)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(auto entry, headOf(database, stored));
    LOOPWRIGHT_ASSIGN(const auto own, MetaStore(database).station());
    LOOPWRIGHT_ASSIGN(const auto foreign, ForeignStore(database).eventsOfOrder(entry.number));
    entry.events = foreign;
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(entry.number));
    for (const Event &event : events)
        if (event.kind != takenAlongKind &&
            event.kind != recalledKind) // so that the same work makes the same bundle
            entry.events.push_back({own, event});
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(entry.number));
    for (const StationConflict &conflict : conflicts)
        if (conflict.code == ConflictCode::OrderChanged && conflict.isOpen())
            entry.undecided << conflict.station;
    entry.undecided.removeDuplicates();
    LOOPWRIGHT_ASSIGN(const auto origins, ForeignStore(database).originsOf(entry.number));
    const auto known = byFact(origins);
    const PairsThen pairs(events, stored.order);
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(entry.number));
    for (const Fact &fact : facts) {
        const auto origin = known.constFind(fact.id);
        entry.facts.push_back({canonicalJson(fact.toJson()),
                               origin == known.constEnd() ? own : origin->station,
                               origin == known.constEnd() ? pairs.of(fact.id) : origin->pair});
    }
    return entry;
}

Result<BundledOrder> orderComingBack(Records &records, const StoredOrder &stored, qint64 told)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(auto entry, headOf(database, stored));
    LOOPWRIGHT_ASSIGN(const auto own, MetaStore(database).station());
    LOOPWRIGHT_ASSIGN(const auto taken, StationStore(database).carried(entry.number));
    for (const CarriedOrder &each : taken)
        if (each.station == own)
            entry.base = each.content;
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofCircuit(entry.circuit));
    for (const Event &event : events)
        if (event.sequence > told)
            entry.events.push_back({own, event});
    const auto rows = sealedBy(entry.events);
    LOOPWRIGHT_ASSIGN(const auto origins, ForeignStore(database).originsOf(entry.number));
    const auto known = byFact(origins);
    const PairsThen pairs(events, stored.order);
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(entry.number));
    for (const Fact &fact : facts)
        if (known.contains(fact.id))
            entry.seen << fact.id;
        else if (rows.contains({"fact", fact.id}))
            entry.facts.push_back({canonicalJson(fact.toJson()), own, pairs.of(fact.id)});
    LOOPWRIGHT_ASSIGN(const auto decisions, DecisionStore(database).ofOrder(entry.number));
    for (const StoredDecision &decision : decisions)
        if (rows.contains({"decision", decision.id}))
            entry.decisions.push_back(bundled(decision));
    LOOPWRIGHT_ASSIGN(const auto certificates, CertificateStore(database).ofOrder(entry.number));
    for (const StoredCertificate &certificate : certificates) {
        LOOPWRIGHT_ASSIGN(auto whole, bundled(database, certificate));
        const bool isNew =
            rows.contains({"certificate", certificate.number}) ||
            rows.contains({"certificate_issue",
                           QString("%1/%2").arg(certificate.number).arg(whole.issues.size())});
        if (isNew)
            entry.certificates.push_back(std::move(whole));
    }
    return entry;
}

Result<ServiceOrder> orderIn(const BundledOrder &entry, const QByteArray &content,
                             const QString &place)
{
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(content, place));
    LOOPWRIGHT_ASSIGN(const auto order, ServiceOrder::fromJson(object, place));
    if (order.number != entry.number || order.circuit != entry.circuit)
        return failure(ErrorCode::BadInput, "is another order than its entry says", place);
    return order;
}

namespace {

class PartAdding
{
public:
    PartAdding(Records &records, Transaction &transaction, const BundledOrder &entry,
               const QString &sender)
        : m_records(records)
        , m_transaction(transaction)
        , m_entry(entry)
        , m_sender(sender)
    {
    }

    Result<void> fact(const Fact &fact, const BundledFact &bundled)
    {
        LOOPWRIGHT_ASSIGN(const auto before, FactStore(m_transaction.database()).find(fact.id));
        if (before) {
            if (before->digest() == sha256Hex(bundled.content))
                m_parts.alreadyThere << fact.id;
            return {};
        }
        LOOPWRIGHT_TRY(FactStore::add(m_transaction, fact));
        const bool ahead = fact.at.isAheadOf(m_records.now());
        m_parts.ahead = m_parts.ahead || ahead;
        const QString origin = bundled.station.isEmpty() ? m_sender : bundled.station;
        LOOPWRIGHT_ASSIGN(const auto own, MetaStore(m_transaction.database()).station());
        if (origin != own) // of a station that was restored it was its own before
            LOOPWRIGHT_TRY(ForeignStore::add(m_transaction,
                                             FactOrigin{fact.id, origin, {}, bundled.pair, ahead}));
        m_parts.added << fact.id;
        m_parts.facts.push_back(fact);
        return {};
    }

    Result<void> certificate(const BundledCertificate &bundled, const QString &place)
    {
        const CertificateStore store(m_transaction.database());
        LOOPWRIGHT_ASSIGN(const auto content, parseJsonObject(bundled.content, place));
        LOOPWRIGHT_ASSIGN(const auto before, store.find(bundled.number));
        const QString digest = sha256Hex(bundled.content);
        if (before && before->digest != digest) {
            m_parts.twice.push_back(
                {bundled.number, before->order, before->digest, m_entry.number, digest});
            return {};
        }
        if (!before) {
            LOOPWRIGHT_TRY(CertificateStore::add(m_transaction, {bundled.number,
                                                                 m_entry.number,
                                                                 bundled.decision,
                                                                 bundled.at,
                                                                 content,
                                                                 {},
                                                                 bundled.claims}));
            m_parts.certificates << bundled.number;
        }
        LOOPWRIGHT_ASSIGN(const auto there, store.issuesOf(bundled.number));
        for (std::size_t i = there.size(); i < bundled.issues.size(); ++i) {
            const BundledIssue &issue = bundled.issues[i];
            LOOPWRIGHT_TRY(CertificateStore::addIssue(m_transaction, bundled.number,
                                                      issue.fileSha256, issue.paper, issue.at));
        }
        return {};
    }

    AddedParts take() { return std::move(m_parts); }

private:
    Records &m_records;
    Transaction &m_transaction;
    const BundledOrder &m_entry;
    QString m_sender;
    AddedParts m_parts;
};

} // namespace

QJsonObject CertificateTwice::toJson() const
{
    QStringList orders{order, otherOrder}, digests{digest, otherDigest};
    orders.sort();
    digests.sort();
    return {{"number", number},
            {"orders", QJsonArray::fromStringList(orders)},
            {"digests", QJsonArray::fromStringList(digests)}};
}

Text CertificateTwice::sentence() const
{
    return Text(QT_TRANSLATE_NOOP(
                    "core", "Certificate number %1 was given out twice: for order %2 (%3), which "
                            "has it here, and for order %4 (%5), whose certificate is not taken "
                            "in. The records of the station are in use twice: have one of them "
                            "restored from a backup, which gives it a new tag, add it again, and "
                            "issue a certificate for order %4 anew."))
        .arg(number)
        .arg(order)
        .arg(shortCode(digest))
        .arg(otherOrder)
        .arg(shortCode(otherDigest));
}

Result<std::vector<Fact>> factsIn(const BundledOrder &entry, const QString &place)
{
    std::vector<Fact> facts;
    facts.reserve(entry.facts.size());
    for (const BundledFact &bundled : entry.facts) {
        const QString where = QString("%1.facts[%2]").arg(place).arg(facts.size());
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(bundled.content, where));
        LOOPWRIGHT_ASSIGN(auto fact, Fact::fromJson(object, where));
        if (fact.order != entry.number)
            return failure(ErrorCode::BadInput, "is of another order", where);
        facts.push_back(std::move(fact));
    }
    return facts;
}

Result<AddedParts> addParts(Records &records, Transaction &transaction, const BundledOrder &entry,
                            const std::vector<Fact> &facts, const QString &sender,
                            const QString &place)
{
    PartAdding adding(records, transaction, entry, sender);
    for (const bool voids : {false, true}) // a void comes after what it strikes out
        for (std::size_t i = 0; i < facts.size(); ++i)
            if ((facts[i].kind() == FactKind::Void) == voids)
                LOOPWRIGHT_TRY(adding.fact(facts[i], entry.facts[i]));
    for (const BundledDecision &decision : entry.decisions)
        LOOPWRIGHT_TRY(DecisionStore::addStored(transaction, decision, entry.number));
    for (const BundledCertificate &certificate : entry.certificates)
        LOOPWRIGHT_TRY(adding.certificate(certificate, place + '.' + certificate.number));
    return adding.take();
}

Result<int> addForeignEvents(Records &records, Transaction &transaction, const BundledOrder &entry)
{
    const ForeignStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto own, MetaStore(records.database()).station());
    QHash<QPair<QString, QString>, QHash<qint64, QString>> known;
    int added = 0;
    for (const ForeignEvent &each : entry.events) {
        if (each.station == own)
            continue;
        const auto key = qMakePair(each.station, each.event.subject);
        if (!known.contains(key)) {
            LOOPWRIGHT_ASSIGN(const auto chain, store.chainOf(each.station, each.event.subject));
            for (const Event &event : chain)
                known[key].insert(event.sequence, event.digest);
            known[key]; // may be empty
        }
        const QString before = known[key].value(each.event.sequence);
        if (each.event.computedDigest() != each.event.digest)
            return failure(ErrorCode::BadInput, "An event is not what its digest says.",
                           "broken_chain");
        if (!before.isEmpty() && before != each.event.digest)
            return failure(ErrorCode::Refused,
                           QString("Station %1 told another history of %2 before: its records were "
                                   "replaced by an older copy without restore.")
                               .arg(each.station, each.event.subject),
                           "forked");
        if (!before.isEmpty())
            continue;
        LOOPWRIGHT_TRY(ForeignStore::add(transaction, each));
        known[key].insert(each.event.sequence, each.event.digest);
        ++added;
    }
    return added;
}

} // namespace loopwright
