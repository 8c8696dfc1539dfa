#pragma once
// Jobs put into the records, for tests of the stores: an office, orders, facts, a decision, a
// certificate.

#include "core/history/HistoryChain.h"
#include "db/AssignmentStore.h"
#include "db/BoardStore.h"
#include "db/CertificateStore.h"
#include "db/ConflictStore.h"
#include "db/DecisionStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"
#include "db/HazardStore.h"
#include "db/InstrumentStore.h"
#include "db/KeyStore.h"
#include "db/LimitSetStore.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"
#include "db/StationStore.h"
#include "tests/support/Jobs.h"
#include "tests/support/Records.h"

namespace loopwright::jobs {

/// Runs `write` in a transaction of its own and commits it with an event of the subject.
template<class Write>
Result<void> inTransaction(Database &database, const QString &subject, Write write)
{
    auto transaction = Transaction::begin(database);
    if (!transaction)
        return failure(transaction.error());
    LOOPWRIGHT_TRY(write(*transaction));
    return transaction->commit(sampleEvent(subject));
}

inline Result<void> addOffice(Database &database, const QString &key = "NORTH")
{
    return inTransaction(database, registerSubject(), [&](Transaction &transaction) {
        return OfficeStore::put(transaction, {key, "North exchange", "ni2"},
                                {{"loopback", UnpublishedNumber("217-555-0199")}});
    });
}

inline Result<void> addOrder(Database &database, const ServiceOrder &order, bool held = false)
{
    return inTransaction(database, circuitSubject(order.circuit), [&](Transaction &transaction) {
        return OrderStore::put(transaction, order, held);
    });
}

inline Result<void> setStatus(Database &database, const ServiceOrder &order, OrderStatus status)
{
    return inTransaction(database, circuitSubject(order.circuit), [&](Transaction &transaction) {
        return OrderStore::setStatus(transaction, order.number, status);
    });
}

/// Plans the claims of a stored order; the conflicts.
inline std::vector<Conflict> claim(Database &database, const ServiceOrder &order)
{
    std::vector<Conflict> conflicts;
    const auto done = inTransaction(
        database, circuitSubject(order.circuit), [&](Transaction &transaction) -> Result<void> {
            const auto claimed = AssignmentStore::claim(transaction, order);
            if (!claimed)
                return failure(claimed.error());
            conflicts = *claimed;
            return {};
        });
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
    return conflicts;
}

inline ServiceOrder changed(OrderFields fields, const OrderFields &other)
{
    for (auto it = other.begin(); it != other.end(); ++it)
        fields[it.key()] = it.value();
    return order(fields);
}

inline Result<void> addFacts(Database &database, const DecisionInput &input)
{
    return inTransaction(database, circuitSubject(input.order.circuit),
                         [&](Transaction &transaction) -> Result<void> {
                             for (const Fact &fact : input.facts)
                                 LOOPWRIGHT_TRY(FactStore::add(transaction, fact));
                             return {};
                         });
}

/// A whole accepted basic-rate job with its decision and certificate "26-K7M4QP-00001-43".
inline Result<void> addWholeJob(Database &database)
{
    const DecisionInput evidence = input(briFields(), briFacts());
    const QString subject = circuitSubject(evidence.order.circuit);
    LOOPWRIGHT_TRY(addOffice(database));
    LOOPWRIGHT_TRY(
        inTransaction(database, registerSubject(), [](Transaction &transaction) -> Result<void> {
            LOOPWRIGHT_TRY(PersonStore::put(transaction, {"K7", "A. Rivera", Role::Installer}));
            LOOPWRIGHT_TRY(InstrumentStore::put(transaction, instrument()));
            LOOPWRIGHT_TRY(LimitSetStore::add(transaction, limits()));
            return KeyStore::add(transaction, {issuerHolder, QByteArray(32, 'i'), {}, {}},
                                 sampleEvent().at);
        }));
    LOOPWRIGHT_TRY(addOrder(database, evidence.order));
    LOOPWRIGHT_TRY(addFacts(database, evidence));
    return inTransaction(database, subject, [&](Transaction &transaction) -> Result<void> {
        const Decision decision = decide(evidence, limits());
        const Moment at = sampleEvent(subject).at; // as the program does: rows and event at once
        LOOPWRIGHT_TRY(DecisionStore::add(transaction, decision, evidence, at));
        const QJsonObject content{{"certificate", "26-K7M4QP-00001-43"},
                                  {"decision", decision.id},
                                  {"issued_at", at.text()},
                                  {"order", QJsonObject{{"order_number", evidence.order.number}}}};
        LOOPWRIGHT_TRY(CertificateStore::add(
            transaction,
            {"26-K7M4QP-00001-43", evidence.order.number, decision.id, at, content, {}, {}}));
        LOOPWRIGHT_TRY(CertificateStore::addIssue(transaction, "26-K7M4QP-00001-43",
                                                  QString(64, 'a'), "a4", at));
        return {};
    });
}

/// Of an order that a van took along: what went, and what came back otherwise.
inline Result<void> addVanRows(Transaction &transaction, const ServiceOrder &order)
{
    const Moment at = *Moment::parse(u"2026-03-05T12:00:00-06:00");
    const QString van = "ABC234", bundle(64, 'b');
    LOOPWRIGHT_TRY(StationStore::add(transaction, {"van-7", van}));
    LOOPWRIGHT_TRY(StationStore::addBundle(transaction, {bundle, BundleKind::Out, van, {}}));
    LOOPWRIGHT_TRY(StationStore::carry(
        transaction, {order.number, van, {}, bundle, canonicalJson(order.toJson()), at}));
    LOOPWRIGHT_TRY(StationStore::tell(transaction, order.number,
                                      {van, order.fields(), order.fields(), true, {}, 0}));
    Event event;
    event.order = order.number;
    event.by = "K7";
    event.kind = "facts_recorded";
    LOOPWRIGHT_TRY(ForeignStore::add(
        transaction, ForeignEvent{van, HistoryChain(circuitSubject(order.circuit)).append(event)}));
    LOOPWRIGHT_TRY(ForeignStore::add(transaction, FactOrigin{uuid(1), van, {}, order.pair, false}));
    LOOPWRIGHT_TRY(ConflictStore::add(
        transaction, {"c1", order.number, ConflictCode::ClockAhead, van, {}, at, {}}));
    return ConflictStore::settle(transaction, "c1", {officeSide, "seen", "Dana", at, at});
}

/// After addWholeJob: what it leaves out, so that every table has rows.
inline Result<void> addMoreRows(Database &database)
{
    const ServiceOrder order = jobs::order(briFields());
    LOOPWRIGHT_TRY(inTransaction(
        database, circuitSubject(order.circuit), [&](Transaction &transaction) -> Result<void> {
            LOOPWRIGHT_TRY(AssignmentStore::claim(transaction, order));
            LOOPWRIGHT_TRY(HazardStore::note(transaction, order, {"7"}));
            LOOPWRIGHT_TRY(
                HazardStore::tell(transaction, {"A-1002", order.office, {}, {"7"}, 2, {}}));
            LOOPWRIGHT_TRY(addVanRows(transaction, order));
            return BoardStore::put(transaction, order, {});
        }));
    return inTransaction(database, registerSubject(), [](Transaction &transaction) {
        return OfficeStore::putIssuer(
            transaction, {"Example Line Company", "1 Main Street", "217-555-0100", {}, {}});
    });
}

} // namespace loopwright::jobs
