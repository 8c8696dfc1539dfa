// Orders from a file.

#include "app/actions/Acting.h"
#include "app/actions/AtHome.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/ImportRun.h"
#include "app/actions/OrderIntake.h"
#include "core/order/ServiceOrder.h"
#include "db/Connection.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"

#include <QHash>

namespace loopwright {

namespace {

class OrderImport
{
public:
    OrderImport(Records &records, const ImportOptions &options)
        : m_records(records)
        , m_options(options)
    {
    }

    Result<void> prepare()
    {
        LOOPWRIGHT_ASSIGN(const auto offices, OfficeStore(m_records.database()).all());
        for (const ServingOffice &office : offices)
            m_officeVariant.insert(office.key, office.protocolVariant);
        LOOPWRIGHT_ASSIGN(const auto people, PersonStore(m_records.database()).all());
        for (const Person &person : people)
            m_people.insert(person.key);
        return {};
    }

    Result<RowOutcome> take(Transaction &transaction, const CsvTable &table, const CsvRow &row)
    {
        OrderReading reading = readOrder(fieldsOf(table, row), [this](const QString &office) {
            const auto found = m_officeVariant.constFind(office);
            return found == m_officeVariant.constEnd() ? std::nullopt : std::optional(*found);
        });
        RowOutcome outcome{RowOutcome::Refused, std::move(reading.malformed), {}};
        if (worst(outcome.findings) == Severity::Error)
            return outcome;
        transaction.database().connection().foresee(
            [&] { (void)takeRead(transaction, reading, row, outcome); });
        return takeRead(transaction, std::move(reading), row, std::move(outcome));
    }

    Result<std::vector<Event>> finish(Transaction &transaction, ImportReport &report)
    {
        return m_held.release(m_records, transaction, report);
    }

private:
    /// A row that is whole.
    Result<RowOutcome> takeRead(Transaction &transaction, OrderReading reading, const CsvRow &row,
                                RowOutcome outcome)
    {
        LOOPWRIGHT_ASSIGN(const auto before,
                          OrderStore(transaction.database()).find(reading.order.number));
        if (before) {
            reading.order.keepPlan(before->order);
            if (before->order == reading.order)
                return RowOutcome{RowOutcome::Unchanged, stillHeld(*before), {}};
            if (const Text why = whyNotChanged(*before); !why.isEmpty()) {
                outcome.findings.push_back(
                    {Severity::Error, "order_differs", why, {}, "order_number", 0});
                return outcome;
            }
            LOOPWRIGHT_ASSIGN(const auto out, outTrouble(m_records, before->order.number));
            if (!out.isEmpty()) {
                outcome.findings.push_back(
                    {Severity::Error, "order_out", out, {}, "order_number", 0});
                return outcome;
            }
        }
        LOOPWRIGHT_ASSIGN(const auto trouble,
                          repairTrouble(transaction.database(), reading.order, before));
        if (!trouble.isEmpty()) {
            outcome.findings.push_back(
                {Severity::Error, "no_repair", trouble, {}, "order_type", 0});
            return outcome;
        }
        auto taken = takeIn(transaction, reading.order, before, std::move(outcome));
        if (taken && taken->kind == RowOutcome::Held)
            m_held.note(reading.order.number, row.line);
        return taken;
    }
    /// It waits as it did when it was taken in, and who takes it in again reads so.
    static Findings stillHeld(const StoredOrder &before)
    {
        if (!before.held || before.status != OrderStatus::Open)
            return {};
        return {{Severity::Warning,
                 "order_held",
                 Text(QT_TRANSLATE_NOOP("core", "Order %1 is there, and held until its identifiers "
                                                "are mended."))
                     .arg(before.order.number),
                 {},
                 "order_number",
                 0}};
    }
    OrderFields fieldsOf(const CsvTable &table, const CsvRow &row) const
    {
        OrderFields fields;
        for (const QString &column : table.header)
            if (const QString value = table.value(row, column);
                !value.isEmpty() && !column.isEmpty() && !m_options.ignoredColumns.contains(column))
                fields.insert(column, value);
        return fields;
    }
    Text whyNotChanged(const StoredOrder &before) const
    {
        if (!m_options.update)
            return Text(QT_TRANSLATE_NOOP("core", "Order %1 is there with other values."))
                .arg(before.order.number);
        if (before.status != OrderStatus::Open)
            return Text(QT_TRANSLATE_NOOP("core", "Order %1 is %2 and cannot be changed."))
                .arg(before.order.number)
                .arg(toText(before.status));
        return {};
    }
    Result<RowOutcome> takeIn(Transaction &transaction, const ServiceOrder &order,
                              const std::optional<StoredOrder> &before, RowOutcome outcome)
    {
        LOOPWRIGHT_ASSIGN(const auto taken, takeOrder(m_records, transaction, order, before));
        outcome.kind = taken.held ? RowOutcome::Held : RowOutcome::Accepted;
        const Findings identifiers = checkOrderIdentifiers(order);
        outcome.findings.insert(outcome.findings.end(), identifiers.begin(), identifiers.end());
        outcome.findings.insert(outcome.findings.end(), taken.findings.begin(),
                                taken.findings.end());
        if (!order.installer.isEmpty() && !m_people.contains(order.installer))
            outcome.findings.push_back(
                {Severity::Warning,
                 "installer_not_registered",
                 Text(QT_TRANSLATE_NOOP("core", "Installer %1 is not registered."))
                     .arg(order.installer),
                 {},
                 "installer",
                 0});
        outcome.events.push_back(taken.event);
        return outcome;
    }

    Records &m_records;
    const ImportOptions &m_options;
    QHash<QString, QString> m_officeVariant;
    QSet<QString> m_people;
    HeldRows m_held;
};

} // namespace

CsvLayout ordersLayout()
{
    return {requiredOrderColumns(), optionalOrderColumns(), {}};
}

Result<ImportReport> importOrders(Records &records, const QByteArray &csv,
                                  const ImportOptions &options)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders));
    OrderImport import(records, options);
    LOOPWRIGHT_TRY(import.prepare());
    const ImportRun run{
        records, options, ordersLayout(),
        [&import](Transaction &transaction, const CsvTable &table, const CsvRow &row) {
            return import.take(transaction, table, row);
        },
        [&import](Transaction &transaction, ImportReport &report) {
            return import.finish(transaction, report);
        }};
    return run.run(csv);
}

} // namespace loopwright
