#include "app/actions/BulkChange.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/BulkEvents.h"
#include "app/actions/Events.h"
#include "app/actions/OrderIntake.h"
#include "core/order/OrderScope.h"
#include "db/AssignmentStore.h"
#include "db/BoardStore.h"
#include "db/CertificateStore.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"

#include <QSet>
#include <QUuid>

#include <algorithm>

namespace loopwright {

namespace {

constexpr qint64 ordersBetweenBulkReports = 100;

/// One order of a circuit that a change concerns; without changes: judged anew if it is open.
struct PlannedOrder
{
    QString number;
    OrderStatus status = OrderStatus::Open;
    bool held = false;
    std::vector<ValueChange> changes;
};
struct PlannedCircuit
{
    QString circuit;
    std::vector<PlannedOrder> orders;

    bool isChanged() const
    {
        return std::ranges::any_of(
            orders, [](const PlannedOrder &order) { return !order.changes.empty(); });
    }
};

struct Planned
{
    BulkReport report;
    std::vector<PlannedCircuit> circuits; ///< with changes
    ServingOffice office;
};

/// Who holds the values that a change may ask for.
class Holders
{
public:
    Result<void> read(const Database &database, const OfficeChange &change)
    {
        const AssignmentStore store(database);
        const bool split = change.kind == OfficeChangeKind::AreaCode;
        const auto behind = [](const QString &digits) -> QString {
            return digits + ':';
        }; // after 9
        if (split) {
            const QString first = "+1" + change.to;
            LOOPWRIGHT_ASSIGN(m_holders[ClaimKind::Dn],
                              store.heldBetween(ClaimKind::Dn, {}, first, behind(first)));
        }
        if (!split || change.spids) {
            const QString first = split ? change.to : QString();
            LOOPWRIGHT_ASSIGN(
                m_holders[ClaimKind::Spid],
                store.heldBetween(ClaimKind::Spid, change.office, first, behind(first)));
        }
        return {};
    }

    /// Another circuit that has it; empty: none.
    QString other(ClaimKind kind, const QString &value, const QString &circuit)
    {
        const QString holder = m_holders[kind].value(value);
        return holder == circuit ? QString() : holder;
    }
    /// The circuit will have it.
    void take(ClaimKind kind, const QString &value, const QString &circuit)
    {
        m_holders[kind].insert(value, circuit);
    }

private:
    std::map<ClaimKind, QHash<QString, QString>> m_holders;
};

/// What is said of the change is completed and checked.
Result<Planned> beginPlan(Records &records, const OfficeChange &change)
{
    LOOPWRIGHT_ASSIGN(const auto office, OfficeStore(records.database()).find(change.office));
    if (!office)
        return failure(ErrorCode::NotFound,
                       QString("There is no office \"%1\".").arg(change.office.left(60)), "office");
    Planned plan;
    plan.office = *office;
    plan.report.change = change;
    if (change.kind == OfficeChangeKind::Variant && change.from.isEmpty())
        plan.report.change.from = office->protocolVariant;
    LOOPWRIGHT_TRY(checkOfficeChange(plan.report.change));
    plan.report.doubt = doubtAbout(plan.report.change);
    plan.report.officeToo = change.kind == OfficeChangeKind::Variant &&
                            office->protocolVariant == plan.report.change.from;
    return plan;
}

/// Goes through the orders of the office, those of a circuit together.
class LinePlanning
{
public:
    explicit LinePlanning(Planned &plan)
        : m_plan(plan)
    {
    }

    Result<void> walk(const Database &database, const Progress &progress)
    {
        const OfficeChange &change = m_plan.report.change;
        LOOPWRIGHT_TRY(m_holders.read(database, change));
        LOOPWRIGHT_ASSIGN(const auto carried, StationStore(database).carried());
        for (const CarriedOrder &each : carried)
            if (each.isOut())
                m_out.insert(each.order);
        LOOPWRIGHT_ASSIGN(m_certified, CertificateStore(database).ordersOfOffice(change.office));
        const OrderStore orders(database);
        LOOPWRIGHT_ASSIGN(const auto total, orders.countOfOffice(change.office));
        qint64 done = 0;
        LOOPWRIGHT_TRY(
            orders.eachLineOf(change.office, [&](const StoredOrder &stored) -> Result<void> {
                if (++done % ordersBetweenBulkReports == 0 && progress && !progress(done, total))
                    return failure(ErrorCode::Refused, "It was stopped; nothing was changed.");
                add(stored);
                return {};
            }));
        endCircuit();
        return {};
    }

private:
    void add(const StoredOrder &stored)
    {
        const QString &circuit = stored.order.circuit;
        if (circuit != m_circuit.circuit)
            endCircuit();
        m_circuit.circuit = circuit;
        // A held order holds nothing: it may want what another has, before and after.
        std::vector<std::pair<ClaimKind, QString>> wanted;
        const HolderOf holderOf = [&](ClaimKind kind, const QString &value) {
            if (stored.held)
                return QString();
            QString other = m_holders.other(kind, value, circuit);
            if (other.isEmpty())
                wanted.push_back({kind, value});
            return other;
        };
        ChangedOrder changed = changedBy(m_plan.report.change, stored.order, holderOf);
        if (!changed.changes.empty()) // a line that stays as it is takes nothing
            for (const auto &[kind, value] : wanted)
                m_holders.take(kind, value, circuit);
        const QString &number = stored.order.number;
        for (const ValueChange &value : changed.changes)
            m_plan.report.changes.push_back({circuit, number, value});
        for (const ValueKept &value : changed.cannot)
            m_plan.report.cannot.push_back({circuit, number, value});
        m_circuit.orders.push_back(
            {number, stored.status, stored.held, std::move(changed.changes)});
    }
    void endCircuit()
    {
        if (m_circuit.isChanged()) {
            // The one by which it works is changed before those that are judged against it.
            std::stable_partition(
                m_circuit.orders.begin(), m_circuit.orders.end(),
                [](const PlannedOrder &order) { return order.status != OrderStatus::Open; });
            ++m_plan.report.circuits;
            for (const PlannedOrder &order : m_circuit.orders) {
                m_plan.report.orders += !order.changes.empty();
                m_plan.report.out += !order.changes.empty() && m_out.contains(order.number);
                m_plan.report.certificates +=
                    !order.changes.empty() && m_certified.contains(order.number);
            }
            m_plan.circuits.push_back(std::move(m_circuit));
        }
        m_circuit = {};
    }

    Planned &m_plan;
    Holders m_holders;
    QSet<QString> m_certified; ///< orders that have a certificate
    QSet<QString> m_out;       ///< orders that vans have
    PlannedCircuit m_circuit;
};

Result<Planned> planOf(Records &records, const OfficeChange &change, const Progress &progress)
{
    LOOPWRIGHT_ASSIGN(auto plan, beginPlan(records, change));
    LOOPWRIGHT_TRY(LinePlanning(plan).walk(records.database(), progress));
    return plan;
}

/// The plan is carried out within one transaction.
class Carrying
{
public:
    Carrying(Records &records, Transaction &transaction, const BulkReport &report,
             const Progress &progress)
        : m_records(records)
        , m_transaction(transaction)
        , m_report(report)
        , m_progress(progress)
    {
    }

    /// Held orders last: what they want must not be theirs because its holder was not asked yet.
    Result<void> carryOut(const std::vector<PlannedCircuit> &circuits)
    {
        for (const bool held : {false, true})
            for (const PlannedCircuit &circuit : circuits)
                LOOPWRIGHT_TRY(carryOut(circuit, held));
        return {};
    }
    qint64 events() const { return m_events; }

private:
    Result<void> carryOut(const PlannedCircuit &circuit, bool held)
    {
        QStringList concerned; // open orders that are judged against the one by which it works
        if (!held && circuit.orders.front().status != OrderStatus::Open &&
            !circuit.orders.front().changes.empty())
            for (const PlannedOrder &order : circuit.orders)
                if (order.changes.empty())
                    concerned << order.number;
        for (const PlannedOrder &order : circuit.orders)
            if (order.held == held && !order.changes.empty())
                LOOPWRIGHT_TRY(change(order, concerned));
        for (const QString &number : std::as_const(concerned))
            LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, number));
        return {};
    }

    Result<void> change(const PlannedOrder &planned, const QStringList &concerned)
    {
        if (m_done++ % ordersBetweenBulkReports == 0 && m_progress &&
            !m_progress(m_done, m_report.orders))
            return failure(ErrorCode::Refused, "It was stopped; nothing was changed.");
        LOOPWRIGHT_ASSIGN(const auto before,
                          OrderStore(m_transaction.database()).get(planned.number));
        OrderFields values;
        ColumnChanges columns;
        for (const ValueChange &value : planned.changes) {
            values.insert(value.what, value.now);
            columns.insert(value.what, {value.old, value.now});
        }
        const ServiceOrder order = withValues(before.order, values);
        QJsonObject detail{{"bulk", m_report.id},
                           {"change", m_report.change.toJson()},
                           {"changes", toJson(columns)},
                           {"held_before", before.held}};
        if (before.status != OrderStatus::Open) {
            if (!concerned.isEmpty())
                detail.insert("concerned", QJsonArray::fromStringList(concerned));
            LOOPWRIGHT_TRY(OrderStore::put(m_transaction, order, false));
            LOOPWRIGHT_TRY(
                AssignmentStore::exchange(m_transaction, order, AssignmentState::Working));
            LOOPWRIGHT_TRY(BoardStore::putIdentifiers(m_transaction, order));
        } else {
            LOOPWRIGHT_TRY(changeOpen(before, order, detail));
        }
        ++m_events;
        return m_transaction.record(orderEvent(m_records, order, bulk::changed, detail));
    }

    Result<void> changeOpen(const StoredOrder &before, const ServiceOrder &order,
                            QJsonObject &detail)
    {
        LOOPWRIGHT_ASSIGN(const auto held, isHeld(order));
        detail.insert("held", held);
        LOOPWRIGHT_TRY(OrderStore::put(m_transaction, order, held));
        if (held)
            LOOPWRIGHT_TRY(AssignmentStore::releasePlanned(m_transaction, order.number));
        else
            LOOPWRIGHT_TRY(
                AssignmentStore::exchange(m_transaction, order, AssignmentState::Planned));
        PendingEvent pending;
        QJsonArray retires;
        for (const ChangedWhat what : whatChanged(before.order, order)) {
            pending.changes.push_back({what, m_records.now()});
            retires << toText(what);
        }
        if (!retires.isEmpty())
            detail.insert("retires", retires);
        LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, order.number, pending));
        return {};
    }
    Result<bool> isHeld(const ServiceOrder &order) const
    {
        if (order.type == OrderType::Repair)
            return false;
        LOOPWRIGHT_ASSIGN(const auto conflicts,
                          AssignmentStore(m_transaction.database()).conflictsOf(order));
        return !conflicts.empty() || worst(checkOrderIdentifiers(order)) == Severity::Error;
    }

    Records &m_records;
    Transaction &m_transaction;
    const BulkReport &m_report;
    const Progress &m_progress;
    qint64 m_done = 0, m_events = 0;
};

Result<void> changeOfficeItself(Transaction &transaction, const Planned &plan)
{
    if (!plan.report.officeToo)
        return {};
    ServingOffice office = plan.office;
    office.protocolVariant = plan.report.change.to;
    LOOPWRIGHT_ASSIGN(const auto lines, OfficeStore(transaction.database()).testLines(office.key));
    return OfficeStore::put(transaction, office, lines);
}

} // namespace

Result<BulkReport> previewBulk(Records &records, const OfficeChange &change,
                               const Progress &progress)
{
    LOOPWRIGHT_ASSIGN(auto plan, planOf(records, change, progress));
    return std::move(plan.report);
}

Result<BulkReport> applyBulk(Records &records, const OfficeChange &change, const Progress &progress)
{
    LOOPWRIGHT_TRY(allow(records, Act::ChangeOffice));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(auto plan, planOf(records, change, progress));
    BulkReport &report = plan.report;
    report.applied = true;
    if (plan.circuits.empty() && !report.officeToo)
        return std::move(report);
    report.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    Carrying carrying(records, transaction, report, progress);
    LOOPWRIGHT_TRY(carrying.carryOut(plan.circuits));
    LOOPWRIGHT_TRY(changeOfficeItself(transaction, plan));
    std::vector<Event> events;
    LOOPWRIGHT_ASSIGN(const auto freed, claimForHeldOrders(records, transaction, events));
    events.push_back(registerEvent(records, bulk::changed,
                                   {{"bulk", report.id},
                                    {"change", report.change.toJson()},
                                    {"circuits", qint64(report.circuits)},
                                    {"orders", qint64(report.orders)},
                                    {"cannot", qint64(report.cannot.size())},
                                    {"office_too", report.officeToo},
                                    {"events", carrying.events() + qint64(events.size())},
                                    {"freed", QJsonArray::fromStringList(freed)}}));
    LOOPWRIGHT_TRY(transaction.commit(events));
    return std::move(report);
}

void BulkLine::appendTo(QByteArray &json) const
{
    appendCanonicalObject(json, {{"circuit", circuit},
                                 {"new", value.now},
                                 {"old", value.old},
                                 {"order", order},
                                 {"what", value.what}});
}

void BulkKept::appendTo(QByteArray &json) const
{
    appendCanonicalObject(json, {{"because", value.because.english()},
                                 {"circuit", circuit},
                                 {"old", value.old},
                                 {"order", order},
                                 {"what", value.what}});
}

} // namespace loopwright
