#include "app/actions/Audit.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/EvidenceStore.h"
#include "core/acceptance/EvidenceDays.h"
#include "core/history/Event.h"
#include "db/AssignmentStore.h"
#include "db/Connection.h"
#include "db/HazardStore.h"
#include "db/MetaStore.h"

namespace loopwright {

namespace {

constexpr int ordersBetweenAuditReports = 500;

using Columns = QMap<QString, QString>;

class DerivedAudit
{
public:
    explicit DerivedAudit(Records &records)
        : m_database(records.database())
    {
    }

    Result<std::vector<DerivedFault>> run(const Progress &progress)
    {
        LOOPWRIGHT_TRY(compareAll(progress));
        LOOPWRIGHT_TRY(compareSearch());
        return std::move(m_faults);
    }

private:
    void add(const QString &subject, const QString &what) { m_faults.push_back({subject, what}); }
    Result<void> compareAll(const Progress &progress);
    Result<void> readLimits();
    Result<void> compareOrder(const StoredOrder &stored);
    Result<void> compareOpen(const StoredOrder &stored, const Columns &shown);
    Result<void> compareClosed(const StoredOrder &stored, Columns shown);
    Result<void> findDays(const StoredOrder &stored, const Columns &shown, Columns &wanted) const;
    Result<void> compareAssignments();
    Result<void> compareRanks();
    Result<void> compareTally();
    Result<void> compareSearch();

    Database &m_database;
    std::vector<LimitSet> m_limits; ///< by which the board may have been decided
    std::vector<DerivedFault> m_faults;
};

QStringList differing(const Columns &stored, const Columns &wanted)
{
    QStringList names;
    for (const QString &name : stored.keys() + wanted.keys())
        if (stored.value(name) != wanted.value(name) ||
            stored.contains(name) != wanted.contains(name))
            names << name;
    names.removeDuplicates();
    return names;
}

QString orderDiffers(const StoredOrder &stored, const QString &what, const QStringList &names)
{
    return QString("order %1: %2 otherwise than computed anew (%3)")
        .arg(stored.order.number, what, names.join(", "));
}

Result<void> DerivedAudit::compareAll(const Progress &progress)
{
    const ReadSnapshot snapshot(m_database.connection()); // one moment, however long it takes
    LOOPWRIGHT_TRY(snapshot.result());
    LOOPWRIGHT_TRY(readLimits());
    const OrderStore orders(m_database);
    LOOPWRIGHT_ASSIGN(const auto total, orders.count());
    qint64 done = 0;
    LOOPWRIGHT_TRY(orders.each([&](const StoredOrder &stored) -> Result<void> {
        if (++done % ordersBetweenAuditReports == 0 && progress && !progress(done, total))
            return failure(ErrorCode::Refused, "The audit was stopped.");
        return compareOrder(stored);
    }));
    LOOPWRIGHT_TRY(compareAssignments());
    LOOPWRIGHT_TRY(compareTally());
    return compareRanks();
}

/// The set that the board says it was decided by; where it was several, any of them.
Result<void> DerivedAudit::readLimits()
{
    LOOPWRIGHT_ASSIGN(const auto noted, MetaStore(m_database).boardLimits());
    const LimitSetStore store(m_database);
    if (noted && !noted->isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto set, store.find(*noted));
        if (set) {
            m_limits = {*set};
            return {};
        }
        add("meta", QString("the board is said to be decided by limit set %1, which is not there")
                        .arg(*noted));
    }
    LOOPWRIGHT_ASSIGN(m_limits, store.all());
    return {};
}

Result<void> DerivedAudit::compareOrder(const StoredOrder &stored)
{
    const QString &number = stored.order.number;
    LOOPWRIGHT_ASSIGN(const auto columns, OrderStore(m_database).columnsOf(number));
    if (const auto names = differing(columns, OrderStore::columnsFor(stored.order));
        !names.isEmpty())
        add(circuitSubject(stored.order.circuit), orderDiffers(stored, "its keys stand", names));
    LOOPWRIGHT_ASSIGN(const auto shown, BoardStore(m_database).columnsOf(number));
    if (shown.isEmpty()) {
        add(circuitSubject(stored.order.circuit),
            QString("order %1 is not on the board").arg(number));
        return {};
    }
    if (stored.status == OrderStatus::Open)
        return compareOpen(stored, shown);
    return compareClosed(stored, shown);
}

Result<void> DerivedAudit::compareOpen(const StoredOrder &stored, const Columns &shown)
{
    LOOPWRIGHT_ASSIGN(const auto noted, HazardStore(m_database).pairsOf(stored.order.number));
    QStringList names, missing;
    for (const LimitSet &limits : m_limits) {
        LOOPWRIGHT_ASSIGN(const auto derived, derivedState(m_database, stored, limits));
        names = differing(shown, BoardStore::columnsFor(stored.order, derived.state));
        missing = derived.hazardPairs;
        for (const QString &pair : noted)
            missing.removeAll(pair);
        if (names.isEmpty())
            break;
    }
    const QString subject = circuitSubject(stored.order.circuit);
    if (!names.isEmpty())
        add(subject, orderDiffers(stored, "the board shows it", names));
    if (!missing.isEmpty())
        add(subject, QString("order %1: its hazard is not noted for others on its pair")
                         .arg(stored.order.number));
    return {};
}

/// What the reports count of an order that has ended, if its outcome is what the board says.
Result<void> DerivedAudit::findDays(const StoredOrder &stored, const Columns &shown,
                                    Columns &wanted) const
{
    LOOPWRIGHT_ASSIGN(const auto input, EvidenceStore(m_database).of(stored, {}));
    const EvidenceDays days = evidenceDays(input);
    const QDate takenOn = input.takenIn ? input.takenIn->localDate() : QDate();
    const auto outcome = fromText<OrderOutcome>(shown.value("outcome"));
    const QDate accepted =
        acceptanceDay(stored.status, outcome.value_or(OrderOutcome::Incomplete), days, takenOn);
    wanted.insert("taken_on", takenOn.toString(Qt::ISODate));
    wanted.insert("accepted_on", accepted.toString(Qt::ISODate));
    wanted.insert("visits", QString::number(days.visits));
    return {};
}

Result<void> DerivedAudit::compareClosed(const StoredOrder &stored, Columns shown)
{
    Columns wanted = BoardStore::columnsFor(stored.order, {.status = stored.status});
    LOOPWRIGHT_TRY(findDays(stored, shown, wanted));
    for (const char *judged :
         {"stage", "outcome", "criterion", "reason", "waiting_on", "paper", "hazard", "hazard_at",
          "facts", "runs", "away", "away_at", "conflict", "conflicts"}) {
        shown.remove(judged);
        wanted.remove(judged);
    }
    if (const auto names = differing(shown, wanted); !names.isEmpty())
        add(circuitSubject(stored.order.circuit),
            orderDiffers(stored, "the board shows it", names));
    return {};
}

Result<void> DerivedAudit::compareAssignments()
{
    LOOPWRIGHT_ASSIGN(const auto unwanted, AssignmentStore(m_database).unwanted());
    for (const ValueUse &use : unwanted)
        add(circuitSubject(use.circuits.value(0)),
            QString("%1 %2 is held for order %3, which does not ask for it")
                .arg(toText(use.kind), use.value, use.orders.join(", ")));
    LOOPWRIGHT_ASSIGN(const auto unassigned, AssignmentStore(m_database).unassigned());
    for (const ValueUse &use : unassigned)
        add(circuitSubject(use.circuits.value(0)),
            QString("%1 %2 of order %3 is not assigned")
                .arg(toText(use.kind), use.value, use.orders.join(", ")));
    return {};
}

Result<void> DerivedAudit::compareRanks()
{
    LOOPWRIGHT_ASSIGN(const auto wrong, OrderStore(m_database).wrongRanks());
    for (const QString &number : wrong) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(m_database).get(number));
        add(circuitSubject(stored.order.circuit),
            QString("order %1 was not completed in the order of its rank").arg(number));
    }
    return {};
}

Result<void> DerivedAudit::compareTally()
{
    LOOPWRIGHT_ASSIGN(const auto wrong, BoardStore(m_database).wrongTallies());
    if (wrong > 0)
        add("board", QString("%1 counts of the board are not those of its orders").arg(wrong));
    return {};
}

Result<void> DerivedAudit::compareSearch()
{
    if (m_database.access() == Database::Access::ReadOnly)
        return {}; // SQLite asks for the right to write
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(m_database)); // rolls back
    if (const auto found = BoardStore::checkSearch(transaction); !found)
        add("search", found.error().message);
    return {};
}

} // namespace

Result<std::vector<DerivedFault>> auditDerived(Records &records, const Progress &progress)
{
    return DerivedAudit(records).run(progress);
}

QJsonObject DerivedFault::toJson() const
{
    return {{"subject", subject}, {"what", what}};
}

} // namespace loopwright
