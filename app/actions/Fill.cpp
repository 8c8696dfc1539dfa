// Puts invented records (Invented.h) into an empty database. What is open goes the way of any
// order. What is finished is written by the same stores, judged, digested and sealed by the same
// functions, and comes to the board once, when it is finished, instead of at each step.
// Longer than 400 lines: the steps of an order's life share the transaction and the day.

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/EvidenceStore.h"
#include "app/actions/Invented.h"
#include "app/actions/IssuePaper.h"
#include "app/actions/Issuing.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Maintenance.h"
#include "app/actions/OrderIntake.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/MakeCertificate.h"
#include "db/AssignmentStore.h"
#include "db/BulkLoad.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/HazardStore.h"
#include "db/InstrumentStore.h"
#include "db/MetaStore.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"

#include <QTemporaryDir>

namespace loopwright {

namespace {

constexpr int circuitsBetweenReports = 500;

QJsonArray kindsOf(const std::vector<Fact> &facts)
{
    QJsonArray kinds;
    for (const Fact &fact : facts)
        kinds << toText(fact.kind());
    return kinds;
}

/// Years before the sets that the program ships were in force: the same limits.
Result<LimitSet> earlierLimits(const LimitSet &limits)
{
    QJsonObject set = limits.toJson();
    set.insert("version", "2010-1");
    set.insert("valid_from", "2010-01-01");
    return LimitSet::fromJson(set, "limits");
}

/// The keys that sign the certificates come to the folder of keys when all else is done, so that
/// nothing is left there if the filling is stopped.
class FillingKeys
{
public:
    explicit FillingKeys(Records &records)
        : m_records(records)
        , m_usual(records.keys())
        , m_own(m_folder.path())
    {
    }
    ~FillingKeys() { m_records.setKeys(m_usual); }
    FillingKeys(const FillingKeys &) = delete;
    FillingKeys &operator=(const FillingKeys &) = delete;

    Result<Signer> make(Transaction &transaction)
    {
        LOOPWRIGHT_ASSIGN(auto there, signerAtHand(m_records));
        if (there)
            return std::move(*there);
        m_records.setKeys(m_own);
        LOOPWRIGHT_ASSIGN(auto made, signer(m_records, transaction));
        m_made = {made.key, made.issuer};
        return made;
    }
    Result<void> keep() const
    {
        for (const PublicKey &key : m_made) {
            LOOPWRIGHT_ASSIGN(const auto secret, m_own.find(key.fingerprint()));
            if (secret) // the issuer's may have been there
                LOOPWRIGHT_TRY(m_usual.put(*secret, key.holder));
        }
        return {};
    }

private:
    Records &m_records;
    QTemporaryDir m_folder;
    KeyFolder m_usual, m_own;
    std::vector<PublicKey> m_made;
};

class Filling
{
public:
    Filling(Records &records, Transaction &transaction, Inventor &inventor)
        : m_records(records)
        , m_transaction(transaction)
        , m_database(records.database())
        , m_inventor(inventor)
    {
    }

    Result<void> begin(FillingKeys &keys);
    Result<void> add(const InventedCircuit &circuit);

private:
    Result<void> addRegister();
    Result<void> addOpen(const ServiceOrder &order, const Moment &takenIn,
                         const std::vector<Fact> &facts);
    Result<void> addFinished(const InventedCircuit &circuit);
    Result<void> addCancelled(const InventedCircuit &circuit);
    Result<void> addDisconnect(const ServiceOrder &order, const Moment &takenIn);
    Result<void> addTrouble(const InventedTrouble &trouble);
    Result<void> takeIn(const ServiceOrder &order, const Moment &at);
    Result<void> addFacts(const ServiceOrder &order, const std::vector<Fact> &facts,
                          const QJsonObject &detail = {});
    Result<void> addRetests(const ServiceOrder &order, const std::vector<Fact> &facts);
    Result<void> certify(const Certifying &about, const Moment &at);
    Result<Judged> decideEnd(Certifying &about, const Moment &at);
    Result<void> complete(const ServiceOrder &order, const Moment &at, bool certified);
    Result<void> end(const Certifying &about, const Judged &judged, const Moment &at,
                     const QJsonObject &detail = {});
    Result<void> show(const ServiceOrder &order, OrderStatus status, const DecisionInput &input,
                      const Judged &judged);
    Result<void> record(const ServiceOrder &order, const QString &kind, const Moment &at,
                        const QJsonObject &detail);
    const LimitSet &limitsOn(const Moment &at) const
    {
        return at.localDate() < m_limits.validFrom() ? m_earlier : m_limits;
    }

    Records &m_records;
    Transaction &m_transaction;
    const Database &m_database;
    Inventor &m_inventor;
    LimitSet m_limits, m_earlier;
    std::optional<Signer> m_signer;
    QString m_station;
    QMap<int, int> m_certificates; ///< by year: how many were issued
};

Result<void> Filling::begin(FillingKeys &keys)
{
    LOOPWRIGHT_ASSIGN(m_limits, limitsInForce(m_records));
    LOOPWRIGHT_ASSIGN(m_earlier, earlierLimits(m_limits));
    LOOPWRIGHT_ASSIGN(m_station, MetaStore(m_database).station());
    LOOPWRIGHT_ASSIGN(m_signer, keys.make(m_transaction));
    return addRegister();
}

Result<void> Filling::addRegister()
{
    LOOPWRIGHT_TRY(LimitSetStore::add(m_transaction, m_earlier));
    for (const ServingOffice &office : m_inventor.offices())
        LOOPWRIGHT_TRY(OfficeStore::put(m_transaction, office, {}));
    for (const Person &person : m_inventor.people())
        LOOPWRIGHT_TRY(PersonStore::put(m_transaction, person));
    for (const Instrument &instrument : m_inventor.instruments())
        LOOPWRIGHT_TRY(InstrumentStore::put(m_transaction, instrument));
    return m_transaction.record(registerEvent(
        m_records, "register_invented",
        {{"offices", m_inventor.offices().size()}, {"people", m_inventor.people().size()}}));
}

Result<void> Filling::record(const ServiceOrder &order, const QString &kind, const Moment &at,
                             const QJsonObject &detail)
{
    Event event = orderEvent(m_records, order, kind, detail);
    event.at = at;
    return m_transaction.record(event);
}

Result<void> Filling::takeIn(const ServiceOrder &order, const Moment &at)
{
    LOOPWRIGHT_TRY(OrderStore::put(m_transaction, order, false));
    LOOPWRIGHT_ASSIGN(const auto conflicts, AssignmentStore::claim(m_transaction, order));
    if (!conflicts.empty())
        return failure(ErrorCode::Refused, conflicts.front().reason().english(), order.number);
    return record(order, "order_taken", at, {{"held", false}});
}

Result<void> Filling::addFacts(const ServiceOrder &order, const std::vector<Fact> &facts,
                               const QJsonObject &detail)
{
    if (facts.empty())
        return {};
    for (const Fact &fact : facts)
        LOOPWRIGHT_TRY(FactStore::add(m_transaction, fact));
    QJsonObject said = detail;
    said.insert("kinds", kindsOf(facts));
    return record(order, "facts_recorded", facts.back().at, said);
}

Result<void> Filling::show(const ServiceOrder &order, OrderStatus status,
                           const DecisionInput &input, const Judged &judged)
{
    StoredOrder stored;
    stored.order = order;
    stored.status = status;
    LOOPWRIGHT_ASSIGN(const auto derived, derivedState(m_database, stored, input, judged));
    LOOPWRIGHT_TRY(HazardStore::note(m_transaction, order, derived.hazardPairs));
    return BoardStore::put(m_transaction, order, derived.state);
}

/// As the program takes orders in and records facts.
Result<void> Filling::addOpen(const ServiceOrder &order, const Moment &takenIn,
                              const std::vector<Fact> &facts)
{
    LOOPWRIGHT_ASSIGN(auto taken, takeOrder(m_records, m_transaction, order, std::nullopt));
    taken.event.at = takenIn;
    LOOPWRIGHT_TRY(m_transaction.record(taken.event));
    for (const Fact &fact : facts)
        LOOPWRIGHT_TRY(FactStore::add(m_transaction, fact));
    LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, order.number)); // hears of the day too
    if (facts.empty())
        return {};
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(m_records, m_transaction, order, facts));
    LOOPWRIGHT_TRY(refreshOrdersConcerned(m_records, m_transaction, order, facts, {}));
    return record(order, "facts_recorded", facts.back().at, {{"kinds", kindsOf(facts)}});
}

Result<void> Filling::addCancelled(const InventedCircuit &circuit)
{
    const ServiceOrder &order = circuit.order;
    LOOPWRIGHT_TRY(takeIn(order, circuit.takenIn));
    LOOPWRIGHT_TRY(AssignmentStore::releasePlanned(m_transaction, order.number));
    LOOPWRIGHT_TRY(OrderStore::setStatus(m_transaction, order.number, OrderStatus::Cancelled));
    StoredOrder stored;
    stored.order = order;
    stored.status = OrderStatus::Cancelled;
    LOOPWRIGHT_ASSIGN(const auto input, EvidenceStore(m_database).of(stored, m_limits.version()));
    LOOPWRIGHT_TRY(show(order, OrderStatus::Cancelled, input, judge(input, m_limits)));
    return record(order, "order_cancelled", circuit.ended,
                  {{"because", "the customer withdrew the order"}});
}

/// Like makeIssue(), but no paper is painted, for that takes longer than all else of a circuit: the
/// digest that stands for the file is that of the content.
Result<void> Filling::certify(const Certifying &about, const Moment &at)
{
    const QString &order = about.stored.order.number;
    const int year = at.localDate().year();
    const int sequence = ++m_certificates[year];
    if (sequence > CertificateNumber::mostSequence)
        return {};
    LOOPWRIGHT_ASSIGN(auto sources, sourcesOf(m_records, about));
    sources.issuedAt = at;
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(m_database, about.stored.order.office));
    LOOPWRIGHT_ASSIGN(auto content, makeCertificate(sources, guard));
    content.number = CertificateNumber{year, m_station, sequence}.text();
    const QString digest = content.digest();
    LOOPWRIGHT_TRY(CertificateStore::add(m_transaction, {content.number, order, about.decision.id,
                                                         at, content.toJson(), digest,
                                                         signedClaims(content, *m_signer).text()}));
    LOOPWRIGHT_ASSIGN(const auto issue, CertificateStore::addIssue(m_transaction, content.number,
                                                                   digest, "letter", at));
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(m_database).logHead());
    return record(about.stored.order, "certificate_issued", at,
                  issueDetail(content.number, digest, issue.issue, head));
}

/// Completes what is about the order, and keeps the decision with it: it is judged by the limits of
/// that day from now on. What was judged points into it.
Result<Judged> Filling::decideEnd(Certifying &about, const Moment &at)
{
    const LimitSet &limits = limitsOn(at);
    LOOPWRIGHT_ASSIGN(about.input, EvidenceStore(m_database).of(about.stored, limits.version()));
    const Judged judged = judge(about.input, limits);
    about.decision = judged.decision;
    LOOPWRIGHT_TRY(DecisionStore::add(m_transaction, about.decision, about.input, at));
    return judged;
}

Result<void> Filling::complete(const ServiceOrder &order, const Moment &at, bool certified)
{
    Certifying about;
    about.stored.order = order;
    LOOPWRIGHT_ASSIGN(const auto judged, decideEnd(about, at));
    if (!isAccepted(about.decision.outcome)) {
        const CriterionResult *open = about.decision.firstOpen();
        return failure(ErrorCode::Refused,
                       open ? open->sentence().english() : QString("is not accepted"),
                       order.number);
    }
    if (certified)
        LOOPWRIGHT_TRY(certify(about, at));
    LOOPWRIGHT_TRY(AssignmentStore::startWorking(m_transaction, order.number));
    return end(about, judged, at);
}

Result<void> Filling::end(const Certifying &about, const Judged &judged, const Moment &at,
                          const QJsonObject &detail)
{
    const ServiceOrder &order = about.stored.order;
    LOOPWRIGHT_TRY(OrderStore::setStatus(m_transaction, order.number, OrderStatus::Completed));
    LOOPWRIGHT_TRY(show(order, OrderStatus::Completed, about.input, judged));
    QJsonObject said = detail;
    said.insert("decision", about.decision.id);
    said.insert("outcome", toText(about.decision.outcome));
    return record(order, "order_completed", at, said);
}

/// What is recorded of an order that is no longer open decides nothing.
Result<void> Filling::addRetests(const ServiceOrder &order, const std::vector<Fact> &facts)
{
    QStringList ids;
    for (const Fact &fact : facts)
        ids << fact.id;
    return addFacts(order, facts, {{"after_end", QJsonArray::fromStringList(ids)}});
}

Result<void> Filling::addFinished(const InventedCircuit &circuit)
{
    const ServiceOrder &order = circuit.order;
    LOOPWRIGHT_TRY(takeIn(order, circuit.takenIn));
    LOOPWRIGHT_TRY(addFacts(order, circuit.facts));
    LOOPWRIGHT_TRY(complete(order, circuit.ended, circuit.life == InventedLife::TurnedUp));
    LOOPWRIGHT_TRY(addRetests(order, circuit.retests));
    for (const InventedTrouble &trouble : circuit.troubles)
        LOOPWRIGHT_TRY(addTrouble(trouble));
    if (!circuit.later)
        return {};
    return circuit.later->type == OrderType::Disconnect
               ? addDisconnect(*circuit.later, circuit.laterTakenIn)
               : addOpen(*circuit.later, circuit.laterTakenIn, {});
}

Result<void> Filling::addDisconnect(const ServiceOrder &order, const Moment &takenIn)
{
    LOOPWRIGHT_TRY(takeIn(order, takenIn));
    return complete(order, inventedMoment(order.dueDate, 16 * 60), false);
}

/// A repair ends whatever its decision.
Result<void> Filling::addTrouble(const InventedTrouble &trouble)
{
    const ServiceOrder &order = trouble.order;
    if (!trouble.closing)
        return addOpen(order, trouble.opened, {});
    const Fact &closing = *trouble.closing;
    LOOPWRIGHT_TRY(takeIn(order, trouble.opened));
    LOOPWRIGHT_TRY(FactStore::add(m_transaction, closing));
    Certifying about;
    about.stored.order = order;
    LOOPWRIGHT_ASSIGN(const auto judged, decideEnd(about, closing.at));
    const auto *cleared = closing.as<ClearedFact>();
    return end(about, judged, closing.at,
               {{"cause", toText(cleared->what)},
                {"found", cleared->found.value_or(QString())},
                {"cleared", cleared->text.value_or(QString())},
                {"fact", closing.id}});
}

Result<void> Filling::add(const InventedCircuit &circuit)
{
    switch (circuit.life) {
    case InventedLife::Open:
        return addOpen(circuit.order, circuit.takenIn, circuit.facts);
    case InventedLife::Cancelled:
        return addCancelled(circuit);
    case InventedLife::TakenOver:
    case InventedLife::TurnedUp:
        break;
    }
    return addFinished(circuit);
}

Result<void> checkEmpty(const Database &database)
{
    LOOPWRIGHT_ASSIGN(const auto orders, OrderStore(database).count());
    LOOPWRIGHT_ASSIGN(const auto offices, OfficeStore(database).all());
    if (orders > 0 || !offices.empty())
        return failure(ErrorCode::Refused, "Invented records go into an empty database only.");
    return {};
}

} // namespace

Result<void> fillWithInvented(Records &records, int circuits, quint64 seed,
                              const Progress &progress)
{
    LOOPWRIGHT_TRY(checkEmpty(records.database()));
    const BulkLoad load(records.database());
    LOOPWRIGHT_TRY(load.result());
    FillingKeys keys(records);
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_TRY(checkEmpty(records.database())); // nobody came before
    Inventor inventor(seed, records.now().localDate(), circuits);
    Filling filling(records, transaction, inventor);
    LOOPWRIGHT_TRY(filling.begin(keys));
    for (qint64 circuit = 0; circuit < circuits; ++circuit) {
        if (circuit % circuitsBetweenReports == 0 && progress && !progress(circuit, circuits))
            return failure(ErrorCode::Refused, "The filling was stopped; nothing was changed.");
        LOOPWRIGHT_TRY(filling.add(inventor.next()));
    }
    LOOPWRIGHT_TRY(keys.keep());
    LOOPWRIGHT_TRY(transaction.commit(std::vector<Event>()));
    if (progress)
        progress(circuits, circuits);
    return records.database().keepStatistics(Database::Statistics::All);
}

} // namespace loopwright
