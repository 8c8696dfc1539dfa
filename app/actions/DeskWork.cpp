#include "app/actions/DeskWork.h"

#include "app/actions/Acting.h"
#include "app/actions/Board.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/RecordCheck.h"
#include "app/actions/Refusals.h"
#include "app/actions/VoidRights.h"
#include "db/FactStore.h"
#include "db/OrderStore.h"

namespace loopwright {

namespace {

/// So many orders are looked through for relations at most.
constexpr qsizetype mostRelated = 200;

/// Adds a fact of an order and has the board follow.
Result<void> addDeskFact(Records &records, Transaction &transaction, const StoredOrder &stored,
                         const Fact &fact)
{
    LOOPWRIGHT_TRY(FactStore::add(transaction, fact));
    LOOPWRIGHT_TRY(refreshState(records, transaction, stored.order.number));
    return refreshOrdersOnVisits(records, transaction, stored.order, {fact});
}

Result<Fact> checkedFact(Records &records, const StoredOrder &stored, const DeskWork &work)
{
    const QString &number = stored.order.number;
    if (stored.status != OrderStatus::Open)
        return failure(
            ErrorCode::Refused,
            QString("Order %1 is %2: nothing is done for it.").arg(number, toText(stored.status)));
    const Fact fact{newFactId(), work.at, number, {}, {}, {}, work.fact};
    LOOPWRIGHT_TRY(checkRecord(records, {number, {fact}}, stored.order, number));
    return fact;
}

/// Adds the void of a fact; what it says in the history.
Result<Event> addDeskVoid(Records &records, Transaction &transaction, const QString &id,
                          const QString &because)
{
    const FactStore facts(records.database());
    LOOPWRIGHT_ASSIGN(const auto fact, facts.find(id));
    if (!fact)
        return failure(ErrorCode::NotFound, QString("There is no fact \"%1\".").arg(id.left(60)));
    LOOPWRIGHT_ASSIGN(const auto before, facts.voidOf(id));
    if (before)
        return failure(ErrorCode::Refused,
                       QString("What was recorded of order %1 is void already.").arg(fact->order));
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(fact->order));
    LOOPWRIGHT_TRY(addDeskFact(records, transaction, stored,
                               {newFactId(),
                                records.now(),
                                fact->order,
                                {},
                                {},
                                {},
                                VoidFact{id, because, records.by()}}));
    return orderEvent(records, stored.order, "fact_voided",
                      {{"fact", id}, {"kind", toText(fact->kind())}, {"because", because}});
}

/// The open orders that name one as related.
Result<QStringList> ordersNaming(Records &records, const QString &number)
{
    BoardFilter filter;
    filter.facets.insert(BoardFacet::Open, QStringLiteral("1"));
    filter.text = number;
    filter.limit = int(mostRelated);
    LOOPWRIGHT_ASSIGN(const auto found, boardRows(records, filter));
    QStringList naming;
    for (const BoardRow &row : found) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(row.order));
        if (stored.order.relatedOrder == number)
            naming << row.order;
    }
    return naming;
}

} // namespace

Result<QStringList> recordDeskWork(Records &records, const DeskWork &work)
{
    LOOPWRIGHT_TRY(allow(records, Act::RecordFacts));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const OrderStore orders(records.database());
    std::vector<std::pair<StoredOrder, Fact>> added;
    Refusals refusals;
    for (const QString &number : work.orders) {
        const auto stored = orders.get(number);
        const auto fact =
            stored ? checkedFact(records, *stored, work) : Result<Fact>(failure(stored.error()));
        if (fact)
            added.emplace_back(*stored, *fact);
        else
            LOOPWRIGHT_TRY(refusals.note(failure(fact.error())));
    }
    LOOPWRIGHT_TRY(refusals.answer());
    QStringList ids;
    std::vector<Event> events;
    for (const auto &[stored, fact] : added) {
        LOOPWRIGHT_TRY(addDeskFact(records, transaction, stored, fact));
        ids << fact.id;
        events.push_back(orderEvent(records, stored.order, "facts_recorded",
                                    {{"kinds", QJsonArray{toText(FactKind::Desk)}}}));
    }
    if (!events.empty())
        LOOPWRIGHT_TRY(transaction.commit(events));
    return ids;
}

Result<void> voidDeskWork(Records &records, const QStringList &facts, const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "A fact is voided with a reason."));
    for (const QString &id : facts)
        LOOPWRIGHT_TRY(allowVoid(records, id, false));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    std::vector<Event> events;
    Refusals refusals;
    for (const QString &id : facts) {
        const auto event = addDeskVoid(records, transaction, id, because);
        if (event)
            events.push_back(*event);
        else
            LOOPWRIGHT_TRY(refusals.note(failure(event.error())));
    }
    LOOPWRIGHT_TRY(refusals.answer("Nothing was taken back."));
    return events.empty() ? Result<void>() : transaction.commit(events);
}

Result<QStringList> relatedOrders(Records &records, const QStringList &orders)
{
    const OrderStore stored(records.database());
    QStringList known = orders;
    for (qsizetype i = 0; i < known.size() && known.size() < mostRelated; ++i) {
        LOOPWRIGHT_ASSIGN(const auto one, stored.find(known[i]));
        LOOPWRIGHT_ASSIGN(QStringList near, ordersNaming(records, known[i]));
        if (one && !one->order.relatedOrder.isEmpty())
            near << one->order.relatedOrder;
        for (const QString &number : near)
            if (!known.contains(number))
                known << number;
    }
    QStringList open;
    for (const QString &number : known.mid(orders.size())) {
        LOOPWRIGHT_ASSIGN(const auto one, stored.find(number));
        if (one && one->status == OrderStatus::Open)
            open << number;
    }
    return open;
}

} // namespace loopwright
