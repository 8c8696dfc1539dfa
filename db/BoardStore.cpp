#include "db/BoardStore.h"

#include "core/order/Claims.h"
#include "db/BoardStatement.h"
#include "db/OrderStore.h"
#include "db/SearchText.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

BoardCombination readCombination(const Statement &row)
{
    BoardCombination combination;
    const QString status = row.text("status");
    const auto outcome = row.word<OrderOutcome>("outcome");
    const bool open = status == toText(OrderStatus::Open);
    const auto flag = [](bool value) { return QString(value ? "1" : "0"); };
    combination.values = {{BoardFacet::Open, flag(open)},
                          {BoardFacet::Stage, row.text("stage")},
                          {BoardFacet::Outcome, toText(outcome)},
                          {BoardFacet::Criterion, row.text("criterion")},
                          {BoardFacet::Office, row.text("office")},
                          {BoardFacet::Installer, row.text("installer")},
                          {BoardFacet::WaitingOn, row.text("waiting_on")},
                          {BoardFacet::Paper, flag(row.boolean("paper"))},
                          {BoardFacet::Hazard, flag(row.boolean("hazard"))},
                          {BoardFacet::Away, flag(row.boolean("away"))},
                          {BoardFacet::Conflict, flag(row.boolean("conflict"))}};
    combination.pending = open && !isAccepted(outcome);
    combination.past = row.boolean("past");
    combination.today = row.boolean("today");
    combination.soon = row.boolean("soon");
    combination.thisWeek = row.boolean("this_week");
    combination.missed = row.boolean("missed");
    combination.orders = row.integer("orders");
    return combination;
}

Result<std::vector<BoardCombination>> combinationsOf(Statement &statement)
{
    return rows(statement, readCombination);
}

} // namespace

Result<qint64> BoardStore::count(const BoardQuery &query) const
{
    if (query.text.trimmed().isEmpty() && query.isTallied())
        return boardTally(m_database, query);
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    LOOPWRIGHT_ASSIGN(const auto from, boardIndexFor(m_database, query, how,
                                                     boardSortRow(BoardSort::Due).parts, -1));
    if (from.empty())
        return 0;
    const auto statement = BoardStatement(query, how).on(m_database, "board.count", {from});
    const auto found =
        firstRow(*statement, [](const Statement &row) { return row.integer("orders"); });
    if (!found)
        return failure(found.error());
    return found->value_or(0);
}

Result<bool> BoardStore::findsMore(const BoardQuery &query) const
{
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    if (how != TextBy::Fragments)
        return false;
    for (const NamedInstaller &one : query.named) {
        BoardQuery his;
        his.facets.insert(BoardFacet::Installer, one.key);
        LOOPWRIGHT_ASSIGN(const auto orders, boardTally(m_database, his));
        if (orders > mostOfEach(query))
            return true;
    }
    Statement statement(m_database, "board.found");
    bindWords(statement, searchTerms(query.text));
    statement.bind("most_found", mostFound + 1);
    LOOPWRIGHT_ASSIGN(const auto found, firstRow(statement, [](const Statement &row) {
                          return row.integer("orders");
                      }));
    return found.value_or(0) > mostFound;
}

Result<std::vector<BoardCombination>> BoardStore::tallied(const BoardQuery &query) const
{
    const auto statement =
        tallyStatement(query).on(m_database, "board.tallied", {"board.from_tally"});
    return combinationsOf(*statement);
}

Result<std::vector<BoardCombination>> BoardStore::grouped(const BoardQuery &query,
                                                          QDate today) const
{
    LOOPWRIGHT_ASSIGN(const auto how, textBy(m_database, query.text));
    LOOPWRIGHT_ASSIGN(const auto from, boardIndexFor(m_database, query, how,
                                                     boardSortRow(BoardSort::Due).parts, -1));
    if (from.empty())
        return std::vector<BoardCombination>();
    const auto statement = BoardStatement(query, how)
                               .add("board.by_combination")
                               .on(m_database, "board.grouped", {from});
    const QDate monday = mondayOf(today);
    statement->bind("today", today.toString(Qt::ISODate))
        .bind("risk_ends",
              workingDaysAfter(today, riskWorkingDays).addDays(1).toString(Qt::ISODate))
        .bind("monday", monday.toString(Qt::ISODate))
        .bind("next_monday", monday.addDays(7).toString(Qt::ISODate));
    return combinationsOf(*statement);
}

Result<QMap<QString, int>> BoardStore::loadOn(QDate day) const
{
    Statement statement(m_database, "board.load");
    statement.bind("day", day.toString(Qt::ISODate));
    const auto counts = rows(statement, [](const Statement &row) {
        return std::pair(row.text("installer"), int(row.integer("orders")));
    });
    if (!counts)
        return failure(counts.error());
    QMap<QString, int> load;
    for (const auto &[installer, orders] : *counts)
        load.insert(installer, orders);
    return load;
}

Result<std::optional<BoardRow>> BoardStore::row(const QString &order) const
{
    Statement statement(m_database, "board.lines", {"board.from_order", "board.of_number"});
    statement.bind("order_number", order);
    return firstRow(statement, readBoardRow);
}

Result<std::vector<BoardRow>> BoardStore::inTroubleInCable(const QString &office,
                                                           const QString &cable,
                                                           const QString &butCircuit) const
{
    Statement statement(m_database, "board.lines", {"board.from_cable", "board.in_trouble"});
    statement.bind("office", office);
    statement.bind("from", cable + '-');
    statement.bind("before", cable + '.'); // the sign after the dash
    statement.bind("circuit_number", butCircuit);
    return rows(statement, readBoardRow);
}

Result<std::vector<BoardRow>> BoardStore::atPremises(const QString &premises) const
{
    Statement statement(m_database, "board.lines", {"board.from_order", "board.at_premises"});
    statement.bind("premises_key", premisesKey(premises));
    return rows(statement, readBoardRow);
}

QMap<QString, QString> BoardStore::columnsFor(const ServiceOrder &order, const OrderState &state)
{
    const auto flag = [](bool value) { return QString(value ? "1" : "0"); };
    return {{"order_number", order.number},
            {"status", toText(state.status)},
            {"stage", toText(state.stage)},
            {"outcome", toText(state.outcome)},
            {"criterion", state.criterion},
            {"reason", state.reason},
            {"waiting_on", state.waitingOn},
            {"paper", flag(state.paper)},
            {"hazard", flag(state.hazard)},
            {"hazard_at", state.hazardAt ? state.hazardAt->text() : QString()},
            {"away", flag(!state.out.empty())},
            {"away_at", awayText(state.out)},
            {"conflict", flag(state.conflicts > 0)},
            {"conflicts", QString::number(state.conflicts)},
            {"due_date", order.dueDate.toString(Qt::ISODate)},
            {"promised_date", order.firstDueDate.isEmpty() ? order.dueDate.toString(Qt::ISODate)
                                                           : order.firstDueDate},
            {"office", order.office},
            {"installer", order.installer},
            {"circuit_number", order.circuit},
            {"pair", order.pair},
            {"cable", cableOf(order.pair)},
            {"variant", order.variant},
            {"order_type", toText(order.type)},
            {"kind", toText(order.kind)},
            {"customer", order.customer},
            {"premises", order.premises},
            {"taken_on", state.takenOn.toString(Qt::ISODate)},
            {"accepted_on", state.acceptedOn.toString(Qt::ISODate)},
            {"visits", QString::number(state.visits)},
            {"facts", QString::number(state.facts)},
            {"runs", QString::number(state.runs)},
            {"search", searchTextOf(order)}};
}

Result<QMap<QString, QString>> BoardStore::columnsOf(const QString &order) const
{
    Statement statement(m_database, "board.columns");
    statement.bind("order_number", order);
    return firstRowAsTexts(statement);
}

Result<void> BoardStore::checkSearch(Transaction &transaction)
{
    Statement check(transaction, "board.check_search");
    const auto done = check.run();
    return done ? Result<void>()
                : failure(ErrorCode::BadInput, "the search index does not say what the rows say");
}

Result<qint64> BoardStore::wrongTallies() const
{
    Statement check(m_database, "board.check_tally");
    const auto wrong = firstRow(check, [](const Statement &row) { return row.integer("wrong"); });
    if (!wrong)
        return failure(wrong.error());
    return wrong->value_or(0);
}

Result<void> BoardStore::put(Transaction &transaction, const ServiceOrder &order,
                             const OrderState &state)
{
    LOOPWRIGHT_TRY(OrderStore(transaction.database()).subjectOf(order.number)); // it is there
    Statement put(transaction, "board.put");
    const QMap<QString, QString> columns = columnsFor(order, state);
    for (auto column = columns.begin(); column != columns.end(); ++column)
        put.bind(column.key().toLatin1().constData(), column.value());
    LOOPWRIGHT_TRY(put.write());
    return {};
}

Result<void> BoardStore::putIdentifiers(Transaction &transaction, const ServiceOrder &order)
{
    Statement put(transaction, "board.put_identifiers");
    return put.bind("order_number", order.number)
        .bind("search", searchTextOf(order))
        .bind("variant", order.variant)
        .write();
}

} // namespace loopwright
