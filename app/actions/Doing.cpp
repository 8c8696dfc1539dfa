#include "app/actions/Doing.h"

#include "app/actions/LimitSets.h"
#include "core/acceptance/Evidence.h"
#include "core/base/TextForm.h"
#include "core/order/Claims.h"
#include "db/AssignmentStore.h"
#include "db/BoardStore.h"
#include "db/CertificateStore.h"
#include "db/EvidenceStore.h"
#include "db/FactStore.h"
#include "db/MetaStore.h"

#include <algorithm>

namespace loopwright {

namespace {

Event eventOf(const Records &records, const QString &subject, const QString &order,
              const QString &kind, const QJsonObject &detail)
{
    Event event;
    event.subject = subject;
    event.order = order;
    event.by = records.by();
    event.at = records.now();
    event.kind = kind;
    event.detail = detail;
    return event;
}

/// Column to [before, after] of the columns that differ.
QJsonObject differences(const ServiceOrder &before, const ServiceOrder &after)
{
    const OrderFields old = before.fields(), now = after.fields();
    QJsonObject changes;
    for (const QString &column : old.keys() + now.keys())
        if (old.value(column) != now.value(column))
            changes.insert(column, QJsonArray{old.value(column), now.value(column)});
    return changes;
}

/// Why an order is not accepted, for the board: the first open criterion, what is not met before
/// what is missing.
QString whyNot(const Decision &decision)
{
    for (const CriterionOutcome outcome : {CriterionOutcome::NotMet, CriterionOutcome::Missing})
        for (const CriterionResult &result : decision.criteria)
            if (result.open() && result.outcome == outcome)
                return result.sentence();
    return {};
}

} // namespace

Event registerEvent(const Records &records, const QString &kind, const QJsonObject &detail)
{
    return eventOf(records, registerSubject(), {}, kind, detail);
}

Event orderEvent(const Records &records, const ServiceOrder &order, const QString &kind,
                 const QJsonObject &detail)
{
    return eventOf(records, circuitSubject(order.circuit), order.number, kind, detail);
}

Result<StoredOrder> orderOf(const Database &database, const QString &number)
{
    LOOPWRIGHT_ASSIGN(auto stored, OrderStore(database).find(number));
    if (!stored)
        return failure(ErrorCode::NotFound,
                       QString("There is no order \"%1\".").arg(number.left(60)));
    return std::move(*stored);
}

Result<void> checkReason(const QString &because, const QString &needed)
{
    constexpr int longest = 2000; // as a fact takes it
    if (because.trimmed().isEmpty())
        return failure(ErrorCode::Usage, needed, "because");
    if (const QString trouble = textTrouble(because, longest); !trouble.isEmpty())
        return failure(ErrorCode::Usage, trouble, "because");
    return {};
}

namespace {

/// An order of the board was decided by this set: the board is of that set alone only where all
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

Result<void> refreshState(Records &records, Transaction &transaction, const QString &orderNumber,
                          const std::vector<OrderChange> &pending)
{
    const Database &database = transaction.database();
    LOOPWRIGHT_ASSIGN(const auto stored, orderOf(database, orderNumber));
    LOOPWRIGHT_ASSIGN(const auto limits, limitsFor(records, stored));
    if (stored.status == OrderStatus::Open)
        LOOPWRIGHT_TRY(noteBoardLimits(transaction, limits.version()));
    LOOPWRIGHT_ASSIGN(auto input, EvidenceStore(database).of(stored, limits.version()));
    input.changes.insert(input.changes.end(), pending.begin(), pending.end());
    LOOPWRIGHT_ASSIGN(const auto certificates, CertificateStore(database).ofOrder(orderNumber));
    const Decision decision = decide(input, limits);
    const bool finished = stored.status != OrderStatus::Open || !certificates.empty();
    OrderState state;
    state.stage = stageOf(decision, input, finished);
    state.outcome = decision.outcome;
    state.reason = whyNot(decision);
    state.facts = int(input.facts.size());
    state.runs = int(decision.runs.size());
    return BoardStore::put(transaction, stored.order, state);
}

Result<std::vector<Event>> claimForHeldOrders(Records &records, Transaction &transaction)
{
    std::vector<Event> events;
    LOOPWRIGHT_ASSIGN(const auto held, OrderStore(transaction.database()).held());
    for (const StoredOrder &stored : held) {
        if (worst(identifierFindings(stored.order)) == Severity::Error)
            continue;
        LOOPWRIGHT_ASSIGN(const auto conflicts,
                          AssignmentStore(transaction.database()).conflictsOf(stored.order));
        if (!conflicts.empty())
            continue;
        LOOPWRIGHT_TRY(OrderStore::put(transaction, stored.order, false));
        LOOPWRIGHT_TRY(AssignmentStore::claim(transaction, stored.order));
        LOOPWRIGHT_TRY(refreshState(records, transaction, stored.order.number));
        events.push_back(orderEvent(records, stored.order, "order_no_longer_held", {}));
    }
    return events;
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

Result<void> refreshOrdersOnVisits(Records &records, Transaction &transaction,
                                   const ServiceOrder &order, const std::vector<Fact> &facts)
{
    if (premisesKey(order.premises).isEmpty())
        return {};
    std::vector<QDate> days;
    for (const Fact &fact : facts) {
        const auto *visit = fact.as<VisitFact>();
        if (!visit && !fact.as<SelfTestFact>())
            continue;
        days.push_back(fact.at.localDate());
        for (const auto &moment :
             {visit ? visit->arrived : std::nullopt, visit ? visit->left : std::nullopt})
            if (moment)
                days.push_back(moment->localDate());
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

/// The order moved to other premises: it takes its visits along.
Result<void> refreshBothPremises(Records &records, Transaction &transaction,
                                 const ServiceOrder &before, const ServiceOrder &after)
{
    if (premisesKey(before.premises) == premisesKey(after.premises))
        return {};
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(transaction.database()).ofOrder(after.number));
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(records, transaction, before, facts));
    return refreshOrdersOnVisits(records, transaction, after, facts);
}

} // namespace

Result<TakenOrder> takeOrder(Records &records, Transaction &transaction, const ServiceOrder &order,
                             const std::optional<StoredOrder> &before)
{
    TakenOrder taken;
    LOOPWRIGHT_ASSIGN(const auto conflicts,
                      AssignmentStore(transaction.database()).conflictsOf(order));
    for (const Conflict &conflict : conflicts)
        taken.findings.push_back(conflictFinding(conflict));
    taken.held = !conflicts.empty() || worst(identifierFindings(order)) == Severity::Error;
    LOOPWRIGHT_TRY(OrderStore::put(transaction, order, taken.held));
    if (taken.held) {
        LOOPWRIGHT_TRY(AssignmentStore::releasePlanned(transaction, order.number));
    } else if (const auto claimed = AssignmentStore::claim(transaction, order); !claimed) {
        return failure(claimed.error());
    }
    QJsonObject detail{{"held", taken.held}};
    std::vector<OrderChange> pending;
    if (before) {
        detail.insert("changes", differences(before->order, order));
        if (const QString what = whatChanged(before->order, order); !what.isEmpty()) {
            detail.insert("retires", what);
            pending.push_back({what, records.now()});
        }
    }
    taken.event = orderEvent(records, order, before ? "order_changed" : "order_taken", detail);
    LOOPWRIGHT_TRY(refreshState(records, transaction, order.number, pending));
    if (before)
        LOOPWRIGHT_TRY(refreshBothPremises(records, transaction, before->order, order));
    return taken;
}

Findings identifierFindings(const ServiceOrder &order)
{
    return checkOrderIdentifiers(order);
}

Finding conflictFinding(const Conflict &conflict)
{
    return {Severity::Error, conflict.kind + "_in_use", conflict.reason(), {}, conflict.field, 0};
}

} // namespace loopwright
