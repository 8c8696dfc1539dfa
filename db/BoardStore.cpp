#include "db/BoardStore.h"

#include "core/order/Claims.h"
#include "db/OrderStore.h"
#include "db/SearchText.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

const QString dayFormat = QStringLiteral("yyyy-MM-dd");

/// A query taken apart: which parts of board.sql it needs, and what to bind to each.
class Filter
{
public:
    explicit Filter(const BoardQuery &query)
    {
        text("stage", query.stage ? toText(*query.stage) : QString());
        text("office", query.office);
        text("installer", query.installer);
        text("outcome", query.outcome ? toText(*query.outcome) : QString());
        text("due_from", query.dueFrom.toString(dayFormat));
        text("due_before", query.dueBefore.toString(dayFormat));
        if (query.notDone)
            parts.push_back("board.not_done");
        if (query.open)
            parts.push_back("board.open");
        if (query.hazard)
            parts.push_back("board.hazard");
        const SearchTerms terms = searchTerms(query.text);
        text("match", terms.match);
        if (terms.shortWords != u"[]")
            text("short_words", terms.shortWords);
    }
    void bindTo(Statement &statement) const
    {
        for (const auto &[name, value] : m_values)
            statement.bind(name, value);
    }

    std::vector<std::string_view> parts;

private:
    void text(const char *name, const QString &value)
    {
        static const std::map<std::string_view, std::string_view> labels{
            {"stage", "board.stage"},         {"office", "board.office"},
            {"installer", "board.installer"}, {"outcome", "board.outcome"},
            {"due_from", "board.due_from"},   {"due_before", "board.due_before"},
            {"match", "board.match"},         {"short_words", "board.short_words"}};
        if (value.isEmpty())
            return;
        parts.push_back(labels.at(name));
        m_values.emplace_back(name, value);
    }

    std::vector<std::pair<const char *, QString>> m_values;
};

BoardRow readLine(const Statement &row)
{
    BoardRow line;
    line.order = row.text("order_number");
    line.circuit = row.text("circuit_number");
    line.customer = row.text("customer");
    line.premises = row.text("premises");
    line.kind = row.word<LineKind>("kind");
    line.office = row.text("office");
    line.stage = row.word<Stage>("stage");
    line.outcome = row.word<OrderOutcome>("outcome");
    line.reason = row.text("reason");
    line.installer = row.text("installer");
    line.due = QDate::fromString(row.text("due_date"), Qt::ISODate);
    line.facts = int(row.integer("facts"));
    line.runs = int(row.integer("runs"));
    line.status = row.word<OrderStatus>("status");
    line.held = row.boolean("held");
    line.hazard = row.boolean("hazard");
    return line;
}

/// Statement, group and filter of a tally.
struct TallyKind
{
    std::string_view statement;
    std::string_view group;
    void (*clear)(BoardQuery &); ///< its own filter, so that the count is what choosing shows
};

TallyKind kindOf(BoardStore::Tally of)
{
    switch (of) {
    case BoardStore::Tally::Stage:
        return {"board.stages", "board.by_stage", [](BoardQuery &query) { query.stage.reset(); }};
    case BoardStore::Tally::Office:
        return {"board.offices", "board.by_office",
                [](BoardQuery &query) { query.office.clear(); }};
    case BoardStore::Tally::Installer:
        break;
    }
    return {"board.installers", "board.by_installer",
            [](BoardQuery &query) { query.installer.clear(); }};
}

} // namespace

Result<std::vector<BoardRow>> BoardStore::lines(const BoardQuery &query, int limit,
                                                const BoardRow *after) const
{
    const bool hazardsShown = after && !(after->hazard && after->stage != Stage::Done);
    std::vector<BoardRow> found;
    if (!hazardsShown) {
        LOOPWRIGHT_ASSIGN(found, linesOf(query, true, limit, after));
        after = nullptr;
    }
    const int left = limit < 0 ? limit : limit - int(found.size());
    if (query.hazard || left == 0)
        return found;
    LOOPWRIGHT_ASSIGN(auto others, linesOf(query, false, left, after));
    found.insert(found.end(), std::make_move_iterator(others.begin()),
                 std::make_move_iterator(others.end()));
    return found;
}

Result<std::vector<BoardRow>> BoardStore::linesOf(const BoardQuery &query, bool hazards, int limit,
                                                  const BoardRow *after) const
{
    Filter filter(query);
    if (!hazards)
        filter.parts.push_back("board.no_hazard");
    else if (!query.hazard)
        filter.parts.push_back("board.hazard");
    if (after)
        filter.parts.push_back("board.after");
    filter.parts.push_back("board.sorted");
    Statement statement(m_database, "board.lines", filter.parts);
    filter.bindTo(statement);
    if (after)
        statement.bind("after_due", after->due.toString(dayFormat))
            .bind("after_number", after->order);
    statement.bind("limit", limit);
    return rows(statement, readLine);
}

Result<qint64> BoardStore::count(const BoardQuery &query) const
{
    const Filter filter(query);
    Statement statement(m_database, "board.count", filter.parts);
    filter.bindTo(statement);
    const auto found =
        firstRow(statement, [](const Statement &row) { return row.integer("orders"); });
    if (!found)
        return failure(found.error());
    return found->value_or(0);
}

// The query is a copy, and changed through a pointer to its member.
// NOLINTNEXTLINE(performance-unnecessary-value-param)
Result<QMap<QString, qint64>> BoardStore::tally(BoardQuery query, Tally of) const
{
    const TallyKind kind = kindOf(of);
    kind.clear(query);
    Filter filter(query);
    filter.parts.push_back(kind.group);
    Statement statement(m_database, kind.statement, filter.parts);
    filter.bindTo(statement);
    QMap<QString, qint64> counts;
    const auto read = rows(statement, [&counts](const Statement &row) {
        counts.insert(row.text("value"), row.integer("orders"));
        return true;
    });
    if (!read)
        return failure(read.error());
    return counts;
}

Result<std::vector<qint64>> BoardStore::ids(const BoardQuery &query) const
{
    Filter filter(query);
    filter.parts.push_back("board.sorted");
    Statement statement(m_database, "board.ids", filter.parts);
    filter.bindTo(statement);
    statement.bind("limit", -1);
    return rows(statement, [](const Statement &row) { return row.integer("id"); });
}

Result<std::optional<BoardRow>> BoardStore::line(qint64 id) const
{
    Statement statement(m_database, "board.lines", {"board.id"});
    statement.bind("id", id);
    return firstRow(statement, readLine);
}

Result<std::vector<BoardRow>> BoardStore::atPremises(const QString &premises) const
{
    Statement statement(m_database, "board.at_premises");
    statement.bind("premises_key", premisesKey(premises));
    return rows(statement, readLine);
}

Result<std::optional<OrderState>> BoardStore::stateOf(const QString &order) const
{
    Statement statement(m_database, "board.find");
    statement.bind("order_number", order);
    return firstRow(statement, [](const Statement &row) {
        return OrderState{row.word<Stage>("stage"),  row.word<OrderOutcome>("outcome"),
                          row.text("reason"),        row.boolean("hazard"),
                          int(row.integer("facts")), int(row.integer("runs"))};
    });
}

QMap<QString, QString> BoardStore::columnsFor(const ServiceOrder &order, const OrderState &state)
{
    const auto flag = [](bool value) { return QString(value ? "1" : "0"); };
    return {{"order_number", order.number},
            {"stage", toText(state.stage)},
            {"outcome", toText(state.outcome)},
            {"reason", state.reason},
            {"hazard", flag(state.hazard)},
            {"due_date", order.dueDate.toString(dayFormat)},
            {"office", order.office},
            {"installer", order.installer},
            {"circuit_number", order.circuit},
            {"kind", toText(order.kind)},
            {"customer", order.customer},
            {"premises", order.premises},
            {"facts", QString::number(state.facts)},
            {"runs", QString::number(state.runs)},
            {"search", searchTextOf(order)}};
}

Result<QMap<QString, QString>> BoardStore::columnsOf(const QString &order) const
{
    QMap<QString, QString> columns;
    Statement statement(m_database, "board.columns");
    statement.bind("order_number", order);
    const auto read = firstRow(statement, [&columns](const Statement &row) {
        for (const QString &column : row.columnNames())
            columns.insert(column, row.text(column.toLatin1().constData()));
        return true;
    });
    return read ? Result<QMap<QString, QString>>(columns) : failure(read.error());
}

Result<void> BoardStore::checkSearch(Transaction &transaction)
{
    Statement check(transaction, "board.check_search");
    const auto done = check.run();
    return done ? Result<void>()
                : failure(ErrorCode::BadInput, "the search index does not say what the rows say");
}

Result<void> BoardStore::put(Transaction &transaction, const ServiceOrder &order,
                             const OrderState &state)
{
    LOOPWRIGHT_TRY(OrderStore(transaction.database()).subjectOf(order.number)); // it is there
    Statement put(transaction, "board.put");
    const QMap<QString, QString> columns = columnsFor(order, state);
    for (auto column = columns.begin(); column != columns.end(); ++column)
        put.bind(column.key().toLatin1().constData(), column.value());
    LOOPWRIGHT_TRY(put.run());
    return {};
}

} // namespace loopwright
