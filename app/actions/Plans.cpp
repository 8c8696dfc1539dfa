#include "app/actions/Plans.h"

#include "app/actions/Acting.h"
#include "app/actions/AtHome.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/ImportRun.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/Refusals.h"
#include "app/actions/Register.h"

namespace loopwright {

namespace {

Result<void> checkColumns(const PlanChange &change)
{
    const CsvLayout order{requiredOrderColumns(), optionalOrderColumns(), {}};
    for (const QString &column : change.values.keys()) {
        if (!order.knows(column))
            return failure(ErrorCode::BadInput,
                           QString("\"%1\" is no column of an order").arg(column.left(60)), column);
        if (column == u"order_number")
            return failure(ErrorCode::Refused, "An order keeps its number.", column);
    }
    return {};
}

/// The order as it would be.
Result<ServiceOrder> wished(Records &records, const StoredOrder &stored, const PlanChange &change)
{
    if (stored.status != OrderStatus::Open)
        return failure(ErrorCode::Refused, QString("Order %1 is %2 and cannot be changed.")
                                               .arg(change.order, toText(stored.status)));
    OrderFields fields = stored.order.fields();
    for (auto value = change.values.begin(); value != change.values.end(); ++value)
        fields.insert(value.key(), value->trimmed());
    LOOPWRIGHT_ASSIGN(auto reading, readFields(records, fields));
    for (const Finding &finding : reading.malformed)
        if (finding.severity == Severity::Error)
            return failure(ErrorCode::Refused,
                           QString("Order %1: %2").arg(change.order, finding.reason.english()),
                           finding.field);
    return std::move(reading.order);
}

/// Several changes within one transaction.
class Planning
{
public:
    Planning(Records &records, Transaction &transaction)
        : m_records(records)
        , m_transaction(transaction)
    {
    }

    Result<void> change(const PlanChange &change, bool sameWires)
    {
        LOOPWRIGHT_TRY(checkColumns(change));
        LOOPWRIGHT_ASSIGN(const auto before, OrderStore(m_records.database()).get(change.order));
        LOOPWRIGHT_ASSIGN(const auto order, wished(m_records, before, change));
        if (order == before.order) {
            m_report.unchanged << change.order;
            return {};
        }
        LOOPWRIGHT_TRY(checkAtHome(m_records, change.order));
        LOOPWRIGHT_ASSIGN(const auto taken,
                          takeOrder(m_records, m_transaction, order, before, sameWires));
        m_report.changed.push_back({change.order, taken.changes});
        if (taken.held)
            m_report.held << change.order;
        m_report.findings.insert(m_report.findings.end(), taken.findings.begin(),
                                 taken.findings.end());
        m_events.push_back(taken.event);
        return {};
    }

    const std::vector<Event> &events() const { return m_events; }
    const PlanReport &report() const { return m_report; }

private:
    Records &m_records;
    Transaction &m_transaction;
    PlanReport m_report;
    std::vector<Event> m_events;
};

Result<PlanReport> carryOut(Records &records, Transaction transaction,
                            const std::vector<PlanChange> &changes, bool sameWires)
{
    Planning planning(records, transaction);
    Refusals refusals;
    for (const PlanChange &change : changes)
        LOOPWRIGHT_TRY(refusals.note(planning.change(change, sameWires)));
    LOOPWRIGHT_TRY(refusals.answer());
    PlanReport report = planning.report();
    if (report.changed.empty())
        return report;
    std::vector<Event> events = planning.events();
    LOOPWRIGHT_ASSIGN(const auto freed, claimForHeldOrders(records, transaction, events));
    for (const QString &order : freed)
        report.held.removeAll(order);
    LOOPWRIGHT_TRY(transaction.commit(events));
    return report;
}

Result<void> checkWaits(const StoredOrder &stored)
{
    if (stored.order.isOnHold())
        return {};
    return failure(ErrorCode::Refused,
                   QString("Order %1 is not on hold.").arg(stored.order.number));
}

/// The step backwards.
Result<PlanChange> wayBack(const StoredOrder &stored, const PlanStep &step)
{
    const OrderFields present = stored.order.fields();
    PlanChange back{step.order, {}};
    for (auto column = step.columns.begin(); column != step.columns.end(); ++column) {
        const QString now = present.value(column.key());
        if (now != column->second)
            return failure(ErrorCode::Refused,
                           QString("Order %1 was changed again since then: its %2 is %3 now.")
                               .arg(step.order, QString(column.key()).replace('_', ' '),
                                    now.isEmpty() ? QString("empty") : QString("\"%1\"").arg(now)));
        back.values.insert(column.key(), column->first);
    }
    return back;
}

std::vector<PlanChange> forEach(const QStringList &orders, const OrderFields &values)
{
    std::vector<PlanChange> changes;
    for (const QString &order : orders)
        changes.push_back({order, values});
    return changes;
}

/// An order that has the day already keeps the reason that it has.
Result<void> addDay(Records &records, std::vector<PlanChange> &changes, QDate on,
                    const QString &because)
{
    for (PlanChange &change : changes) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).find(change.order));
        if (stored && stored->order.dueDate == on)
            continue;
        change.values.insert("due_date", on.toString(Qt::ISODate));
        change.values.insert("due_because", because);
    }
    return {};
}

} // namespace

namespace {

/// An order is planned for somebody of the register; one that came in with another name keeps it.
Result<void> checkInstaller(Records &records, const OrderFields &values)
{
    const QString installer = values.value("installer").trimmed();
    if (!installer.isEmpty())
        LOOPWRIGHT_TRY(registeredPerson(records, installer));
    return {};
}

} // namespace

Result<PlanReport> changePlans(Records &records, const std::vector<PlanChange> &changes,
                               bool sameWires)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders));
    for (const PlanChange &change : changes)
        LOOPWRIGHT_TRY(checkInstaller(records, change.values));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    return carryOut(records, std::move(transaction), changes, sameWires);
}

Result<PlanReport> assignOrders(Records &records, const Assigning &assigning)
{
    auto changes = forEach(assigning.orders, {{"installer", assigning.installer}});
    if (assigning.on.isValid())
        LOOPWRIGHT_TRY(addDay(records, changes, assigning.on, assigning.because));
    return changePlans(records, changes);
}

Result<PlanReport> moveOrders(Records &records, const QStringList &orders, QDate on,
                              const QString &because)
{
    auto changes = forEach(orders, {});
    LOOPWRIGHT_TRY(addDay(records, changes, on, because));
    return changePlans(records, changes);
}

Result<PlanReport> holdOrders(Records &records, const QStringList &orders, WaitingOn waitingOn,
                              const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "An order that waits needs a reason."));
    return changePlans(records, forEach(orders, {{"waiting_on", toText(waitingOn)},
                                                 {"waiting_because", because}}));
}

Result<PlanReport> resumeOrders(Records &records, const QStringList &orders)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    Refusals refusals;
    for (const QString &order : orders) {
        const auto stored = OrderStore(records.database()).get(order);
        LOOPWRIGHT_TRY(
            refusals.note(stored ? checkWaits(*stored) : Result<void>(failure(stored.error()))));
    }
    LOOPWRIGHT_TRY(refusals.answer());
    return carryOut(records, std::move(transaction),
                    forEach(orders, {{"waiting_on", QString()}, {"waiting_because", QString()}}),
                    false);
}

Result<PlanReport> undoPlan(Records &records, const std::vector<PlanStep> &steps)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    std::vector<PlanChange> changes;
    Refusals refusals;
    for (const PlanStep &step : steps) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(step.order));
        auto back = wayBack(stored, step);
        if (back)
            changes.push_back(std::move(*back));
        else
            LOOPWRIGHT_TRY(refusals.note(failure(back.error())));
    }
    LOOPWRIGHT_TRY(refusals.answer("Nothing was taken back."));
    return carryOut(records, std::move(transaction), changes, false);
}

CsvLayout plansLayout()
{
    return {{"order_number", "column", "value"}, {}, {}};
}

Result<ImportReport> importPlans(Records &records, const QByteArray &csv,
                                 const ImportOptions &options)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders));
    HeldRows held;
    const auto take = [&records, &held](Transaction &transaction, const CsvTable &table,
                                        const CsvRow &row) -> Result<RowOutcome> {
        const QString column = table.value(row, "column");
        const PlanChange change{table.value(row, "order_number"),
                                {{column, table.value(row, "value")}}};
        Planning planning(records, transaction);
        auto done = checkInstaller(records, change.values);
        if (done)
            done = planning.change(change, false);
        if (!done && !Refusals::isOfOne(done.error().code))
            return failure(done.error());
        if (!done)
            return RowOutcome::refused("plan_refused", column, Text::message(done.error().message));
        const PlanReport &report = planning.report();
        if (report.changed.empty())
            return RowOutcome{RowOutcome::Unchanged, {}, {}};
        for (const QString &order : report.held)
            held.note(order, row.line);
        return RowOutcome{report.held.isEmpty() ? RowOutcome::Accepted : RowOutcome::Held,
                          report.findings, planning.events()};
    };
    const auto finish = [&records, &held](Transaction &transaction, ImportReport &report) {
        return held.release(records, transaction, report);
    };
    return ImportRun{records, options, plansLayout(), take, finish}.run(csv);
}

QJsonObject PlanReport::toJson() const
{
    QJsonArray steps;
    for (const PlanStep &step : changed)
        steps << QJsonObject{{"order_number", step.order},
                             {"columns", loopwright::toJson(step.columns)}};
    return {{"changed", steps},
            {"unchanged", QJsonArray::fromStringList(unchanged)},
            {"held", QJsonArray::fromStringList(held)},
            {"findings", findingsJson(findings)}};
}

} // namespace loopwright
