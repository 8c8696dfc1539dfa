#include "db/OrderStore.h"

#include "core/history/Event.h"
#include "core/order/Claims.h"
#include "core/order/OfficeChange.h"
#include "db/Statement.h"

#include <QUuid>

#include <algorithm>

namespace loopwright {

namespace {

StoredOrder readStoredOrder(const Statement &row)
{
    StoredOrder stored{{}, row.word<OrderStatus>("status"), row.boolean("held"), row.text("uuid")};
    const auto order = ServiceOrder::fromJson(row.json("content"), "order " + stored.uuid);
    if (order)
        stored.order = *order;
    else
        row.refuse("content", order.error().text());
    return stored;
}

/// As far as a change of its office asks for it.
StoredOrder readStoredLine(const Statement &row)
{
    return {lineOf(row.json("content")), row.word<OrderStatus>("status"), row.boolean("held"),
            row.text("uuid")};
}

/// Over {"content","held","status"}, put together from the content's canonical bytes.
QString digestOf(const QByteArray &content, bool held, OrderStatus status)
{
    return sha256Hex(QByteArray("{\"content\":") + content +
                     (held ? ",\"held\":true" : ",\"held\":false") + ",\"status\":\"" +
                     toText(status).toUtf8() + "\"}");
}

QString valueOf(const std::vector<Claim> &claims, const QString &field)
{
    const auto found = std::find_if(claims.begin(), claims.end(),
                                    [&](const Claim &claim) { return claim.field == field; });
    return found == claims.end() ? QString() : found->value;
}

Result<void> removeTerminalsBut(Transaction &transaction, const ServiceOrder &order)
{
    qint64 kept = 0;
    for (const OrderedTerminal &terminal : order.terminals)
        kept |= qint64(1) << terminal.number;
    Statement remove(transaction, "order.remove_terminals");
    LOOPWRIGHT_TRY(remove.bind("order_number", order.number).bind("kept", kept).write());
    return {};
}

Result<void> putTerminals(Transaction &transaction, const ServiceOrder &order)
{
    const std::vector<Claim> claims = claimsOf(order);
    Statement put(transaction, "order.put_terminal");
    for (const OrderedTerminal &terminal : order.terminals) {
        const QString n = QString::number(terminal.number);
        put.bind("order_number", order.number)
            .bind("number", terminal.number)
            .bind("dn", terminal.dn)
            .bind("dn_key", valueOf(claims, "dn_" + n))
            .bind("spid", valueOf(claims, "spid_" + n))
            .bind("tei", terminal.tei);
        LOOPWRIGHT_TRY(put.write());
    }
    return {};
}

Result<void> visitAll(Statement &statement, StoredOrder (*read)(const Statement &),
                      const std::function<Result<void>(const StoredOrder &)> &visit)
{
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto order, firstRow(statement, read));
        if (!order)
            return {};
        LOOPWRIGHT_TRY(visit(*order));
    }
}

} // namespace

Result<std::optional<StoredOrder>> OrderStore::find(const QString &number) const
{
    Statement statement(m_database, "order.find");
    statement.bind("order_number", number);
    return firstRow(statement, readStoredOrder);
}

Result<StoredOrder> OrderStore::get(const QString &number) const
{
    LOOPWRIGHT_ASSIGN(auto stored, find(number));
    if (!stored)
        return failure(ErrorCode::NotFound,
                       QString("There is no order \"%1\".").arg(number.left(60)));
    return std::move(*stored);
}

Result<std::vector<StoredOrder>> OrderStore::ofCircuit(const QString &circuit) const
{
    Statement statement(m_database, "order.of_circuit");
    statement.bind("circuit_number", circuit);
    return rows(statement, readStoredOrder);
}

Result<std::optional<StoredOrder>> OrderStore::workingOn(const QString &circuit) const
{
    Statement statement(m_database, "order.working");
    statement.bind("circuit_number", circuit);
    auto found = firstRow(statement, readStoredOrder);
    if (found && *found && (*found)->order.type == OrderType::Disconnect)
        found->reset();
    return found;
}

Result<std::optional<StoredOrder>> OrderStore::workedBefore(const QString &completed) const
{
    Statement statement(m_database, "order.worked_before");
    statement.bind("order_number", completed);
    auto found = firstRow(statement, readStoredOrder);
    if (found && *found && (*found)->order.type == OrderType::Disconnect)
        found->reset();
    return found;
}

Result<std::vector<StoredOrder>> OrderStore::held() const
{
    Statement statement(m_database, "order.held");
    return rows(statement, readStoredOrder);
}

Result<std::vector<StoredOrder>> OrderStore::repairs() const
{
    Statement statement(m_database, "order.repairs");
    return rows(statement, readStoredOrder);
}

Result<qint64> OrderStore::count() const
{
    return countOf("order.count");
}

Result<qint64> OrderStore::countOpen() const
{
    return countOf("order.count_open");
}

Result<qint64> OrderStore::countOf(const char *label) const
{
    Statement statement(m_database, label);
    const auto found =
        firstRow(statement, [](const Statement &row) { return row.integer("orders"); });
    if (!found)
        return failure(found.error());
    return found->value_or(0);
}

Result<void>
OrderStore::eachOpen(const std::function<Result<void>(const StoredOrder &)> &visit) const
{
    return eachOf("order.open", visit);
}

Result<void> OrderStore::each(const std::function<Result<void>(const StoredOrder &)> &visit) const
{
    return eachOf("order.all", visit);
}

Result<void> OrderStore::eachOf(const char *label,
                                const std::function<Result<void>(const StoredOrder &)> &visit) const
{
    Statement statement(m_database, label);
    return visitAll(statement, readStoredOrder, visit);
}

Result<void>
OrderStore::eachLineOf(const QString &office,
                       const std::function<Result<void>(const StoredOrder &)> &visit) const
{
    Statement statement(m_database, "order.of_office");
    statement.bind("office", office);
    return visitAll(statement, readStoredLine, visit);
}

Result<qint64> OrderStore::countOfOffice(const QString &office) const
{
    Statement statement(m_database, "order.count_of_office");
    statement.bind("office", office);
    LOOPWRIGHT_ASSIGN(const auto found, firstRow(statement, [](const Statement &row) {
                          return row.integer("orders");
                      }));
    return found.value_or(0);
}

Result<QString> OrderStore::subjectOf(const QString &number) const
{
    Statement statement(m_database, "circuit.of_order");
    statement.bind("order_number", number);
    const auto circuit =
        firstRow(statement, [](const Statement &row) { return row.text("circuit_number"); });
    if (!circuit)
        return failure(circuit.error());
    if (!*circuit)
        return failure(ErrorCode::NotFound, "there is no order " + number);
    return circuitSubject(**circuit);
}

namespace {

void addTerminalColumns(OrderColumns &columns, int number, const QString &dn, const QString &dnKey,
                        const QString &spid, const QString &tei)
{
    const QString of = QString(" of terminal %1").arg(number);
    columns.insert("dn" + of, dn);
    columns.insert("dn_key" + of, dnKey);
    columns.insert("spid" + of, spid);
    columns.insert("tei" + of, tei);
}

} // namespace

OrderColumns OrderStore::columnsFor(const ServiceOrder &order)
{
    OrderColumns columns{
        {"circuit", order.circuit},         {"office", order.office},
        {"order_type", toText(order.type)}, {"due_date", order.dueDate.toString("yyyy-MM-dd")},
        {"installer", order.installer},     {"premises_key", premisesKey(order.premises)},
        {"pair_key", pairKey(order.pair)},  {"pair_identity", pairIdentity(order.pair)}};
    const std::vector<Claim> claims = claimsOf(order);
    for (const OrderedTerminal &terminal : order.terminals) {
        const QString n = QString::number(terminal.number);
        addTerminalColumns(columns, terminal.number, terminal.dn, valueOf(claims, "dn_" + n),
                           valueOf(claims, "spid_" + n), terminal.tei);
    }
    return columns;
}

Result<OrderColumns> OrderStore::columnsOf(const QString &number) const
{
    Statement statement(m_database, "order.columns");
    statement.bind("order_number", number);
    LOOPWRIGHT_ASSIGN(OrderColumns columns, firstRowAsTexts(statement));
    Statement terminals(m_database, "order.terminals");
    terminals.bind("order_number", number);
    const auto all = rows(terminals, [&columns](const Statement &row) {
        addTerminalColumns(columns, int(row.integer("number")), row.text("dn"), row.text("dn_key"),
                           row.text("spid"), row.text("tei"));
        return true;
    });
    return all ? Result<OrderColumns>(columns) : failure(all.error());
}

Result<QStringList> OrderStore::wrongRanks() const
{
    Statement statement(m_database, "order.wrong_ranks");
    return texts(statement, "order_number");
}

Result<QString> OrderStore::circuitUuid(const QString &number) const
{
    Statement statement(m_database, "circuit.uuid_of_order");
    statement.bind("order_number", number);
    const auto found = firstRow(statement, [](const Statement &row) { return row.text("uuid"); });
    if (!found)
        return failure(found.error());
    return found->value_or(QString());
}

Result<StoredOrder> OrderStore::put(Transaction &transaction, const ServiceOrder &order, bool held,
                                    const TravelNames &names)
{
    LOOPWRIGHT_ASSIGN(const auto before, OrderStore(transaction.database()).find(order.number));
    StoredOrder stored = before.value_or(StoredOrder());
    const auto uuid = [](const QString &given) {
        return given.isEmpty() ? QUuid::createUuid().toString(QUuid::WithoutBraces) : given;
    };
    Statement circuit(transaction, "circuit.add");
    circuit.bind("uuid", uuid(names.circuit)).bind("circuit_number", order.circuit);
    LOOPWRIGHT_TRY(circuit.write());
    if (!before)
        stored.uuid = uuid(names.order);
    stored.order = order;
    stored.held = held;
    const QByteArray content = canonicalJson(order.toJson());
    const QString digest = digestOf(content, held, stored.status);
    Statement put(transaction, "order.put");
    put.bind("uuid", stored.uuid)
        .bind("order_number", order.number)
        .bind("circuit_number", order.circuit)
        .bind("office", order.office)
        .bind("order_type", order.type)
        .bind("due_date", order.dueDate.toString("yyyy-MM-dd"))
        .bind("installer", order.installer)
        .bind("premises_key", premisesKey(order.premises))
        .bind("pair_key", pairKey(order.pair))
        .bind("pair_identity", pairIdentity(order.pair))
        .bind("held", held)
        .bindBytes("content", content)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.write());
    if (before)
        LOOPWRIGHT_TRY(removeTerminalsBut(transaction, order));
    LOOPWRIGHT_TRY(putTerminals(transaction, order));
    transaction.seal(circuitSubject(order.circuit), {"order", order.number, digest});
    return stored;
}

Result<void> OrderStore::setStatus(Transaction &transaction, const QString &number,
                                   OrderStatus status)
{
    LOOPWRIGHT_ASSIGN(const auto subject, OrderStore(transaction.database()).subjectOf(number));
    Statement find(transaction, "order.find");
    find.bind("order_number", number);
    const auto before = firstRow(find, [](const Statement &row) {
        return std::pair(row.bytes("content"), row.boolean("held"));
    });
    if (!before)
        return failure(before.error());
    const auto &[content, wasHeld] = before->value();
    const bool held = wasHeld && status == OrderStatus::Open;
    const QString digest = digestOf(content, held, status);
    Statement set(transaction, "order.set_status");
    set.bind("order_number", number)
        .bind("status", status)
        .bind("held", held)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(set.write());
    transaction.seal(subject, {"order", number, digest});
    return {};
}

} // namespace loopwright
