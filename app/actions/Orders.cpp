#include "app/actions/Orders.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Acting.h"
#include "app/actions/AtHome.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/OrderEnd.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/Refusals.h"
#include "db/AssignmentStore.h"
#include "db/OrderStore.h"

namespace loopwright {

namespace {

/// What the desk planned stays, unless the fields say it.
Result<OrderReading> readKeepingPlan(Records &records, const OrderFields &fields)
{
    LOOPWRIGHT_ASSIGN(auto reading, readFields(records, fields));
    LOOPWRIGHT_ASSIGN(const auto before, OrderStore(records.database()).find(reading.order.number));
    if (before)
        reading.order.keepPlan(before->order);
    return reading;
}

/// Everything but the conflicts.
Result<OrderVerdict> judge(Records &records, const OrderReading &reading)
{
    OrderVerdict verdict;
    verdict.findings = reading.malformed;
    verdict.malformed = worst(reading.malformed) == Severity::Error;
    LOOPWRIGHT_ASSIGN(const auto before, OrderStore(records.database()).find(reading.order.number));
    verdict.exists = before.has_value();
    verdict.unchanged = before && before->order == reading.order;
    const Findings identifiers = checkOrderIdentifiers(reading.order);
    verdict.findings.insert(verdict.findings.end(), identifiers.begin(), identifiers.end());
    verdict.held = worst(identifiers) == Severity::Error;
    return verdict;
}

Error malformedError(const Findings &findings)
{
    for (const Finding &finding : findings)
        if (finding.severity == Severity::Error)
            return {ErrorCode::Refused, finding.reason.english(), finding.field};
    return {ErrorCode::Refused, "The order is malformed.", {}};
}

} // namespace

Result<OrderVerdict> checkOrder(Records &records, const OrderFields &fields)
{
    LOOPWRIGHT_ASSIGN(const auto reading, readKeepingPlan(records, fields));
    auto verdict = judge(records, reading);
    if (!verdict)
        return verdict;
    LOOPWRIGHT_ASSIGN(const auto conflicts,
                      AssignmentStore(records.database()).conflictsOf(reading.order));
    for (const Conflict &conflict : conflicts)
        verdict->findings.push_back(conflictFinding(conflict));
    verdict->held = verdict->held || !conflicts.empty();
    return verdict;
}

Result<OrderVerdict> putOrder(Records &records, const OrderFields &fields, bool update,
                              bool sameWires)
{
    LOOPWRIGHT_TRY(allow(records, update ? Act::KeepOrders : Act::TakeOrderOnSite));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto reading, readKeepingPlan(records, fields));
    auto verdict = judge(records, reading);
    if (!verdict || verdict->unchanged)
        return verdict;
    if (verdict->malformed)
        return failure(malformedError(verdict->findings));
    LOOPWRIGHT_ASSIGN(const auto before, OrderStore(records.database()).find(reading.order.number));
    if (before && !update)
        return failure(ErrorCode::Refused,
                       QString("Order %1 is there with other values.").arg(reading.order.number),
                       "order_number");
    if (before && before->status != OrderStatus::Open)
        return failure(ErrorCode::Refused,
                       QString("Order %1 is %2 and cannot be changed.")
                           .arg(reading.order.number, toText(before->status)),
                       "order_number");
    if (before)
        LOOPWRIGHT_TRY(checkAtHome(records, reading.order.number));
    LOOPWRIGHT_ASSIGN(const auto taken,
                      takeOrder(records, transaction, reading.order, before, sameWires));
    verdict->held = taken.held;
    if (const QJsonObject said = taken.event.detail;
        !said.contains("retires") && !said.contains("also_named"))
        verdict->changes = taken.changes;
    verdict->findings.insert(verdict->findings.end(), taken.findings.begin(), taken.findings.end());
    std::vector<Event> events{taken.event};
    LOOPWRIGHT_TRY(claimForHeldOrders(records, transaction, events));
    LOOPWRIGHT_TRY(transaction.commit(events));
    return verdict;
}

Result<void> completeOrder(Records &records, const QString &number)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders, number));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto stored, openOrder(records, number));
    LOOPWRIGHT_TRY(checkAtHome(records, number));
    if (stored.order.type == OrderType::Repair)
        return failure(ErrorCode::Refused,
                       QString("Order %1 is a repair: close its trouble with what was found, what "
                               "cleared it, and the cause.")
                           .arg(number));
    // Kept with the order: it is judged by the limits of this day from now on.
    Decision decision;
    LOOPWRIGHT_TRY(storeDecision(records, transaction, number, decision));
    if (!isAccepted(decision.outcome)) {
        const CriterionResult *open = decision.firstOpen();
        return failure(ErrorCode::Refused,
                       QString("Order %1 is not accepted%2")
                           .arg(number, open ? ": " + open->sentence().english() : QString(".")));
    }
    return endOrder(
        records, stored, OrderStatus::Completed, "order_completed",
        {{"decision", decision.id}, {"outcome", toText(decision.outcome)}},
        [&number](Transaction &t) { return AssignmentStore::startWorking(t, number); },
        transaction);
}

Result<void> cancelOrder(Records &records, const QString &number, const QString &because)
{
    return cancelOrders(records, {number}, because);
}

Result<void> cancelOrders(Records &records, const QStringList &numbers, const QString &because)
{
    LOOPWRIGHT_TRY(
        allow(records, Act::KeepOrders, numbers.size() == 1 ? numbers.front() : QString()));
    LOOPWRIGHT_TRY(checkReason(because, "A cancelled order needs a reason."));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    std::vector<StoredOrder> open;
    Refusals refusals;
    for (const QString &number : numbers) {
        const auto stored = openOrder(records, number);
        const auto may =
            stored ? checkAtHome(records, number) : Result<void>(failure(stored.error()));
        if (may)
            open.push_back(*stored);
        else
            LOOPWRIGHT_TRY(refusals.note(may));
    }
    LOOPWRIGHT_TRY(refusals.answer());
    std::vector<Event> events;
    for (const StoredOrder &stored : open) {
        const QString number = stored.order.number;
        LOOPWRIGHT_ASSIGN(
            const auto ended,
            endWithin(
                records, stored, OrderStatus::Cancelled, "order_cancelled", {{"because", because}},
                [&number](Transaction &t) { return AssignmentStore::releasePlanned(t, number); },
                transaction));
        events.push_back(ended);
    }
    LOOPWRIGHT_TRY(claimForHeldOrders(records, transaction, events));
    return transaction.commit(events);
}

} // namespace loopwright
