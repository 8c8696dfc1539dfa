#include "app/actions/ExportRecords.h"

#include "app/actions/Acting.h"
#include "app/actions/ExportParts.h"
#include "db/AssignmentStore.h"
#include "db/Connection.h"
#include "db/FactStore.h"
#include "db/InstrumentStore.h"
#include "db/LimitSetStore.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"
#include "db/TableExport.h"

namespace loopwright {

namespace {

constexpr qint64 ordersBetweenSteps = 500;

class Exporting
{
public:
    Exporting(Records &records, ExportFolder &folder, const Progress &progress)
        : m_records(records)
        , m_folder(folder)
        , m_progress(progress)
    {
    }

    Result<void> all()
    {
        LOOPWRIGHT_TRY(countOrders());
        LOOPWRIGHT_TRY(sortOrders());
        LOOPWRIGHT_TRY(registers());
        LOOPWRIGHT_TRY(orders());
        LOOPWRIGHT_TRY(repairs());
        LOOPWRIGHT_TRY(jobRecords());
        LOOPWRIGHT_TRY(tables());
        return m_folder.close(about());
    }

private:
    const Database &database() const { return m_records.database(); }
    Result<void> countOrders()
    {
        LOOPWRIGHT_ASSIGN(m_total, OrderStore(database()).count());
        m_total *= 3; // each order is looked at, written, and its facts are
        return {};
    }
    Result<void> step()
    {
        if (++m_done % ordersBetweenSteps == 0 && m_progress && !m_progress(m_done, m_total))
            return failure(ErrorCode::Refused, "The export was stopped; nothing is left of it.");
        return {};
    }

    Result<void> sortOrders();
    Result<void> registers();
    Result<void> people();
    Result<void> limits();
    Result<void> orders();
    Result<void> repairs();
    Result<void> jobRecords();
    Result<void> tables();
    QJsonObject about() const;

    Records &m_records;
    ExportFolder &m_folder;
    const Progress &m_progress;
    qint64 m_done = 0, m_total = 0;
    UsedColumns m_columns;
    QStringList m_last; ///< orders that hold nothing of what they ask for
    QSet<QString> m_lastOrRepair;
    QStringList m_repairs;
    std::vector<QStringList> m_voids, m_exceptions;
};

/// Cancelled or held, or the line was changed since: whoever holds the identifiers goes before.
Result<bool> holdsNothing(const Database &database, const StoredOrder &stored)
{
    if (stored.held || stored.status == OrderStatus::Cancelled)
        return true;
    if (stored.status == OrderStatus::Open)
        return false;
    LOOPWRIGHT_ASSIGN(const auto held, AssignmentStore(database).ofOrder(stored.order.number));
    return std::ranges::all_of(
        held, [](const Assignment &each) { return each.state == AssignmentState::Released; });
}

Result<void> Exporting::sortOrders()
{
    return OrderStore(database()).each([this](const StoredOrder &stored) -> Result<void> {
        LOOPWRIGHT_TRY(step());
        m_columns.note(stored.order);
        const QString &number = stored.order.number;
        if (stored.order.type == OrderType::Repair) {
            m_repairs << number;
            m_lastOrRepair.insert(number);
            return {};
        }
        LOOPWRIGHT_ASSIGN(const bool last, holdsNothing(database(), stored));
        if (last) {
            m_last << number;
            m_lastOrRepair.insert(number);
        }
        return {};
    });
}

Result<void> Exporting::registers()
{
    LOOPWRIGHT_ASSIGN(const auto offices, OfficeStore(database()).all());
    LOOPWRIGHT_TRY(writeOffices(m_folder, m_records, offices));
    LOOPWRIGHT_ASSIGN(const auto issuer, OfficeStore(database()).issuer());
    LOOPWRIGHT_TRY(m_folder.table("issuer.csv", [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(
            take({"name", "address", "telephone", "trouble_telephone", "trouble_hours"}));
        return issuer ? take({issuer->name, issuer->address, issuer->telephone,
                              issuer->troubleTelephone, issuer->troubleHours})
                      : Result<void>();
    }));
    LOOPWRIGHT_TRY(people());
    LOOPWRIGHT_ASSIGN(auto instruments, InstrumentStore(database()).all());
    const auto labelled =
        std::stable_partition(instruments.begin(), instruments.end(),
                              [](const Instrument &instrument) { return !instrument.asLabelled; });
    const std::vector<Instrument> asLabelled(labelled, instruments.end());
    instruments.erase(labelled, instruments.end());
    LOOPWRIGHT_TRY(writeInstruments(m_folder, "instruments.csv", instruments));
    if (!asLabelled.empty())
        LOOPWRIGHT_TRY(writeInstruments(m_folder, "instruments_as_labelled.csv", asLabelled));
    return limits();
}

Result<void> Exporting::people()
{
    LOOPWRIGHT_ASSIGN(const auto people, PersonStore(database()).all());
    return m_folder.table("installers.csv", [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take({"installer", "name", "role", "login"}));
        for (const Person &person : people)
            LOOPWRIGHT_TRY(take({person.key, person.name, toText(person.role), person.login}));
        return {};
    });
}

Result<void> Exporting::limits()
{
    LOOPWRIGHT_ASSIGN(const auto sets, LimitSetStore(database()).all());
    for (const LimitSet &set : sets)
        LOOPWRIGHT_TRY(
            m_folder.document("limits/" + asFileName(set.version()) + ".json", set.toJson()));
    return {};
}

Result<void> Exporting::orders()
{
    const OrderStore store(database());
    const QStringList columns = m_columns.columns();
    return m_folder.table("orders.csv", [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take(columns));
        LOOPWRIGHT_TRY(store.each([&](const StoredOrder &stored) -> Result<void> {
            LOOPWRIGHT_TRY(step());
            return m_lastOrRepair.contains(stored.order.number)
                       ? Result<void>()
                       : take(orderCells(stored.order, columns));
        }));
        for (const QString &number : std::as_const(m_last)) {
            LOOPWRIGHT_ASSIGN(const auto stored, store.get(number));
            LOOPWRIGHT_TRY(take(orderCells(stored.order, columns)));
        }
        return {};
    });
}

Result<void> Exporting::repairs()
{
    if (m_repairs.isEmpty())
        return {};
    const QStringList columns = m_columns.columns();
    return m_folder.table("repairs.csv", [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take(columns));
        for (const QString &number : std::as_const(m_repairs)) {
            LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database()).get(number));
            LOOPWRIGHT_TRY(take(orderCells(stored.order, columns)));
        }
        return {};
    });
}

Result<void> Exporting::jobRecords()
{
    LOOPWRIGHT_TRY(OrderStore(database()).each([this](const StoredOrder &stored) -> Result<void> {
        LOOPWRIGHT_TRY(step());
        LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database()).ofOrder(stored.order.number));
        OrderRecords found = recordsOf(stored.order.number, facts);
        for (auto file = found.files.begin(); file != found.files.end(); ++file)
            LOOPWRIGHT_TRY(m_folder.document(file.key(), file.value()));
        std::ranges::move(found.voids, std::back_inserter(m_voids));
        std::ranges::move(found.exceptions, std::back_inserter(m_exceptions));
        return {};
    }));
    const auto write = [this](const QString &name, const QStringList &header,
                              const std::vector<QStringList> &rows) {
        return m_folder.table(name, [&](const TakeCells &take) -> Result<void> {
            LOOPWRIGHT_TRY(take(header));
            for (const QStringList &row : rows)
                LOOPWRIGHT_TRY(take(row));
            return {};
        });
    };
    LOOPWRIGHT_TRY(write("voids.csv", voidColumns(), m_voids));
    return write("exceptions.csv", exceptionColumns(), m_exceptions);
}

Result<void> Exporting::tables()
{
    const QStringList tables = exportedTables(m_folder.form().internal);
    for (const QString &table : tables) {
        if (table == u"issuer")
            continue; // the file for the import holds it whole, under this name
        if (m_progress && !m_progress(m_total, m_total))
            return failure(ErrorCode::Refused, "The export was stopped; nothing is left of it.");
        LOOPWRIGHT_TRY(m_folder.table(table + ".csv", [&](const TakeCells &take) {
            return exportTable(database(), table, take);
        }));
    }
    return {};
}

QJsonObject Exporting::about() const
{
    return {
        {"kind", "records"},
        {"made_at", Records::realNow().text()},
        {"spreadsheet", m_folder.form().spreadsheet},
        {"take_in", QJsonArray{"office import offices.csv", "issuer import issuer.csv",
                               "limits add limits/*.json", "instrument import instruments.csv",
                               "order import orders.csv", "record records/*.json",
                               "record records_after/*.json", "installer import installers.csv"}}};
}

} // namespace

Result<QStringList> exportRecords(Records &records, const RecordsExport &what)
{
    if (what.internal)
        LOOPWRIGHT_TRY(allow(records, Act::ExportInternal));
    LOOPWRIGHT_ASSIGN(auto guard, what.internal ? Result<NumberGuard>(NumberGuard())
                                                : guardOfAllOffices(records));
    LOOPWRIGHT_ASSIGN(auto folder, ExportFolder::open(what.folder, {std::move(guard), what.internal,
                                                                    what.spreadsheet}));
    const ReadSnapshot snapshot(records.database().connection());
    LOOPWRIGHT_TRY(snapshot.result());
    LOOPWRIGHT_TRY(Exporting(records, folder, what.progress).all());
    return folder.paths();
}

} // namespace loopwright
