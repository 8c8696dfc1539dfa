// What was changed of all lines of an office is taken back.

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/BulkChange.h"
#include "app/actions/BulkEvents.h"
#include "app/actions/Events.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/Refusals.h"
#include "db/AssignmentStore.h"
#include "db/BoardStore.h"
#include "db/EventStore.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"

#include <algorithm>
#include <limits>

namespace loopwright {

namespace {

constexpr qint64 ordersBetweenUndoReports = 100;

/// What the history says of one order of the change.
struct ChangedThen
{
    QString circuit, order;
    OrderFields before;
    bool heldBefore = false;
    QStringList concerned;
};

QString circuitOf(const Event &event)
{
    return event.subject.mid(circuitSubject({}).size());
}

Result<std::vector<ChangedThen>> changedThen(const Database &database, const BulkDone &bulk)
{
    std::vector<ChangedThen> all;
    LOOPWRIGHT_TRY(EventStore(database).each(
        bulk.logPosition - bulk.events, bulk.logPosition - 1,
        [&](const Event &event) -> Result<void> {
            if (event.kind == bulk::changed && bulk::idOf(event) == bulk.id)
                all.push_back({circuitOf(event), event.order, bulk::columnsBefore(event),
                               event.detail.value("held_before").toBool(),
                               event.detail.value("concerned").toVariant().toStringList()});
            return {};
        }));
    return all;
}

/// In words of the desk: "order_changed" is told as "order changed".
QString spoken(const QString &kind)
{
    return QString(kind).replace('_', ' ');
}

/// What an order that was taken in since has of the change: a number of the new area code, or the
/// variant that the office got. Empty: nothing, or it was cancelled.
QString builtWith(const BulkDone &bulk, const StoredOrder &stored)
{
    const OfficeChange &change = bulk.change;
    if (stored.order.office != change.office || stored.status == OrderStatus::Cancelled)
        return {};
    if (change.kind == OfficeChangeKind::Variant)
        return bulk.officeToo && stored.order.variant == change.to ? change.to : QString();
    OfficeChange back = change;
    std::swap(back.from, back.to);
    const ChangedOrder moved =
        changedBy(back, stored.order, [](ClaimKind, const QString &) { return QString(); });
    return !moved.changes.empty() ? moved.changes.front().old
           : moved.cannot.empty() ? QString()
                                  : moved.cannot.front().old;
}

/// Circuits, or orders that it let go, on which something was done since, and orders that were
/// taken in with what it made; a refusal is nothing, nor is what was taken back itself.
class Since
{
public:
    Result<void> read(const Database &database, const BulkDone &bulk,
                      const std::vector<ChangedThen> &orders)
    {
        LOOPWRIGHT_ASSIGN(const auto undone, EventStore(database).ofRegister(bulk::undone));
        const QSet<QString> takenBack = bulk::takenBackIn(undone);
        QSet<QString> circuits;
        for (const ChangedThen &order : orders)
            circuits.insert(order.circuit);
        QStringList taken;
        LOOPWRIGHT_TRY(EventStore(database).each(
            bulk.logPosition + 1, std::numeric_limits<qint64>::max(),
            [&](const Event &event) -> Result<void> {
                // To ask for a decision, or for what one may not do, builds on nothing.
                if (event.kind == u"refused" || event.kind == u"decided" ||
                    event.kind == stillHeldKind || takenBack.contains(bulk::idOf(event)))
                    return {};
                m_orders.insert(event.order);
                const bool concerned = circuits.contains(circuitOf(event));
                if (event.kind == u"order_taken" && !concerned)
                    taken << event.order;
                if (!concerned || event.subject == registerSubject())
                    return {};
                return m_refusals.note(
                    failure(ErrorCode::Refused,
                            QString("Circuit %1: %2 since then (order %3).")
                                .arg(circuitOf(event), spoken(event.kind), event.order)));
            }));
        return noteTaken(database, bulk, taken);
    }
    bool hasOrder(const QString &order) const { return m_orders.contains(order); }
    Refusals &refusals() { return m_refusals; }

private:
    Result<void> noteTaken(const Database &database, const BulkDone &bulk, const QStringList &taken)
    {
        for (const QString &number : taken) {
            LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).get(number));
            const QString with = builtWith(bulk, stored);
            if (!with.isEmpty())
                LOOPWRIGHT_TRY(m_refusals.note(
                    failure(ErrorCode::Refused,
                            QString("Circuit %1: order %2 was taken in since then, with %3.")
                                .arg(stored.order.circuit, number, with))));
        }
        return {};
    }

    QSet<QString> m_orders;
    Refusals m_refusals;
};

/// Within one transaction.
class TakingBack
{
public:
    TakingBack(Records &records, Transaction &transaction, const BulkDone &bulk,
               const Progress &progress)
        : m_records(records)
        , m_transaction(transaction)
        , m_bulk(bulk)
        , m_progress(progress)
    {
    }

    Result<void> run(const std::vector<ChangedThen> &orders, Since &since)
    {
        for (const QString &order : m_bulk.freed)
            if (!since.hasOrder(order))
                LOOPWRIGHT_TRY(holdAgain(order));
        // As it was done: held orders last.
        for (const bool held : {false, true})
            for (const ChangedThen &order : orders) {
                if (order.heldBefore != held)
                    continue;
                if (m_done++ % ordersBetweenUndoReports == 0 && m_progress &&
                    !m_progress(m_done, qint64(orders.size())))
                    return failure(ErrorCode::Refused, "It was stopped; nothing was taken back.");
                LOOPWRIGHT_TRY(since.refusals().note(takeBack(order)));
            }
        LOOPWRIGHT_TRY(since.refusals().answer("Nothing was taken back."));
        return finish();
    }

private:
    Result<void> takeBack(const ChangedThen &then)
    {
        const Database &database = m_transaction.database();
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).get(then.order));
        const ServiceOrder order = withValues(stored.order, then.before);
        if (!then.heldBefore) {
            LOOPWRIGHT_ASSIGN(const auto conflicts, AssignmentStore(database).conflictsOf(order));
            if (!conflicts.empty())
                return failure(
                    ErrorCode::Refused,
                    QString("Circuit %1: %2 is held by circuit %3 now.")
                        .arg(order.circuit, conflicts.front().value, conflicts.front().circuit));
        }
        const bool open = stored.status == OrderStatus::Open;
        LOOPWRIGHT_TRY(OrderStore::put(m_transaction, order, then.heldBefore));
        LOOPWRIGHT_TRY(
            AssignmentStore::takeBack(m_transaction, order, then.heldBefore,
                                      open ? AssignmentState::Planned : AssignmentState::Working));
        // Recorded before it is judged: what the change retired counts again.
        ColumnChanges columns;
        const OrderFields was = stored.order.fields();
        for (auto value = then.before.begin(); value != then.before.end(); ++value)
            columns.insert(value.key(), {was.value(value.key()), *value});
        LOOPWRIGHT_TRY(m_transaction.record(orderEvent(
            m_records, order, bulk::undone, {{"bulk", m_bulk.id}, {"changes", toJson(columns)}})));
        if (!open)
            LOOPWRIGHT_TRY(BoardStore::putIdentifiers(m_transaction, order));
        else
            LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, then.order));
        for (const QString &number : then.concerned)
            LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, number));
        return {};
    }

    /// An order that was held until the change let it go.
    Result<void> holdAgain(const QString &number)
    {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(m_transaction.database()).get(number));
        LOOPWRIGHT_TRY(OrderStore::put(m_transaction, stored.order, true));
        LOOPWRIGHT_TRY(
            AssignmentStore::takeBack(m_transaction, stored.order, true, AssignmentState::Planned));
        LOOPWRIGHT_TRY(m_transaction.record(
            orderEvent(m_records, stored.order, bulk::undone, {{"bulk", m_bulk.id}})));
        m_heldAgain << number;
        return {};
    }

    Result<void> finish()
    {
        // Those that are held again are judged when their values are others' again.
        for (const QString &number : std::as_const(m_heldAgain))
            LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, number));
        if (!m_bulk.officeToo)
            return {};
        const OfficeStore offices(m_transaction.database());
        LOOPWRIGHT_ASSIGN(auto office, offices.find(m_bulk.change.office));
        if (!office || office->protocolVariant != m_bulk.change.to)
            return failure(ErrorCode::Refused,
                           QString("Office %1 was changed since then. Nothing was taken back.")
                               .arg(m_bulk.change.office));
        LOOPWRIGHT_ASSIGN(const auto lines, offices.testLines(office->key));
        office->protocolVariant = m_bulk.change.from;
        return OfficeStore::put(m_transaction, *office, lines);
    }

    Records &m_records;
    Transaction &m_transaction;
    const BulkDone &m_bulk;
    const Progress &m_progress;
    QStringList m_heldAgain;
    qint64 m_done = 0;
};

Result<BulkDone> bulkOf(const Event &event)
{
    const QJsonObject &detail = event.detail;
    BulkDone bulk;
    bulk.id = detail.value("bulk").toString();
    LOOPWRIGHT_ASSIGN(bulk.change,
                      OfficeChange::fromJson(detail.value("change").toObject(), "bulk " + bulk.id));
    bulk.circuits = detail.value("circuits").toInteger();
    bulk.orders = detail.value("orders").toInteger();
    bulk.by = event.by;
    bulk.at = event.at;
    bulk.logPosition = event.logPosition;
    bulk.events = detail.value("events").toInteger();
    bulk.freed = detail.value("freed").toVariant().toStringList();
    bulk.officeToo = detail.value("office_too").toBool();
    return bulk;
}

Result<BulkDone> mustBeLast(Records &records, const QString &id)
{
    LOOPWRIGHT_ASSIGN(auto last, lastBulk(records));
    if (!last)
        return failure(ErrorCode::Refused, "There is no bulk change, or all were taken back.");
    if (!id.isEmpty() && last->id != id)
        return failure(ErrorCode::Refused,
                       "Another bulk change was made since then, or this one was taken back.");
    return std::move(*last);
}

/// One order for each circuit: the one by which it works, else the first.
Result<QStringList> ordersForCards(const Database &database, const BulkDone &bulk)
{
    LOOPWRIGHT_ASSIGN(const auto orders, changedThen(database, bulk));
    QStringList numbers;
    QSet<QString> circuits;
    for (const ChangedThen &order : orders) { // the working one comes first
        if (circuits.contains(order.circuit))
            continue;
        circuits.insert(order.circuit);
        numbers << order.order;
    }
    return numbers;
}

} // namespace

Result<std::optional<BulkDone>> lastBulk(Records &records)
{
    const EventStore events(records.database());
    LOOPWRIGHT_ASSIGN(const auto made, events.ofRegister(bulk::changed));
    LOOPWRIGHT_ASSIGN(const auto undone, events.ofRegister(bulk::undone));
    const QSet<QString> takenBack = bulk::takenBackIn(undone);
    const auto last = std::find_if(made.rbegin(), made.rend(), [&](const Event &event) {
        return !takenBack.contains(bulk::idOf(event));
    });
    if (last == made.rend())
        return std::optional<BulkDone>();
    LOOPWRIGHT_ASSIGN(auto bulk, bulkOf(*last));
    return std::optional(std::move(bulk));
}

Result<BulkDone> undoBulk(Records &records, const QString &id, const Progress &progress)
{
    LOOPWRIGHT_TRY(allow(records, Act::ChangeOffice));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(auto bulk, mustBeLast(records, id));
    LOOPWRIGHT_ASSIGN(const auto orders, changedThen(records.database(), bulk));
    Since since;
    LOOPWRIGHT_TRY(since.read(records.database(), bulk, orders));
    LOOPWRIGHT_TRY(since.refusals().answer("Nothing was taken back."));
    LOOPWRIGHT_TRY(TakingBack(records, transaction, bulk, progress).run(orders, since));
    std::vector<Event> events;
    LOOPWRIGHT_TRY(claimForHeldOrders(records, transaction, events));
    events.push_back(registerEvent(records, bulk::undone,
                                   {{"bulk", bulk.id},
                                    {"change", bulk.change.toJson()},
                                    {"circuits", bulk.circuits},
                                    {"orders", bulk.orders}}));
    LOOPWRIGHT_TRY(transaction.commit(events));
    return bulk;
}

Result<OrderPapers> cardsOfLastBulk(Records &records, Paper paper, const QString &folder,
                                    const Progress &progress)
{
    LOOPWRIGHT_ASSIGN(const auto bulk, mustBeLast(records, {}));
    PapersRequest request;
    LOOPWRIGHT_ASSIGN(request.orders, ordersForCards(records.database(), bulk));
    request.paper = paper;
    request.folder = folder;
    return papersOf(records, request, progress);
}

QString BulkDone::sentence() const
{
    const QString what =
        change.kind == OfficeChangeKind::AreaCode
            ? QString("Area code %1 of office %2 to %3").arg(change.from, change.office, change.to)
            : QString("Office %1 from %2 to %3").arg(change.office, change.from, change.to);
    return what + (circuits == 1 ? QString(": 1 circuit") : QString(": %1 circuits").arg(circuits));
}

QJsonObject BulkDone::toJson() const
{
    return {{"bulk", id},
            {"change", change.toJson()},
            {"circuits", circuits},
            {"orders", orders},
            {"by", by},
            {"at", at.text()}};
}

} // namespace loopwright
