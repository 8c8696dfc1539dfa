#include "db/RowSeals.h"

#include "db/RawStatement.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::string_view unsealedTables[] = {"event", "chain_head", "draft", "paper_due",
                                               "board_tally"};
constexpr std::string_view searchTables = "order_search";

/// The statement is the same for each table, so it stands in no file.
Result<RawStatement> rowOf(Connection &connection, const std::string &table)
{
    return RawStatement::of(connection, "row." + table,
                            "SELECT * FROM \"" + table + "\" WHERE :id = " + keyOf(table));
}

} // namespace

bool isSealedTable(std::string_view table)
{
    return std::ranges::find(unsealedTables, table) == std::end(unsealedTables) &&
           !table.starts_with(searchTables) && !table.starts_with("sqlite_");
}

std::string keyOf(std::string_view table)
{
    return table == "order_state" ? "service_order" : "id";
}

RowWatch::RowWatch(Connection &connection)
    : m_connection(connection)
{
    m_connection.watchRows([this](std::string_view table, qint64 id) { note(table, id); });
}

RowWatch::~RowWatch()
{
    m_connection.watchRows(nullptr);
}

void RowWatch::note(std::string_view table, qint64 id)
{
    if (const auto known = m_written.find(table); known != m_written.end())
        known->second.insert(id);
    else if (isSealedTable(table))
        m_written[std::string(table)].insert(id);
}

Result<QString> RowWatch::someTable()
{
    LOOPWRIGHT_TRY(m_connection.tellWrittenRows());
    return m_written.empty() ? QString() : QString::fromStdString(m_written.begin()->first);
}

Result<void> RowWatch::noteAll(const QByteArray &table)
{
    LOOPWRIGHT_ASSIGN(const auto last,
                      m_connection.number("SELECT coalesce(max(id), 0) FROM " + table));
    for (qint64 id = 1; id <= last; ++id)
        note(table.constData(), id);
    return {};
}

Result<QByteArray> RowWatch::takeLines()
{
    LOOPWRIGHT_TRY(m_connection.tellWrittenRows());
    m_connection.foresee([this] { (void)lines(); });
    LOOPWRIGHT_ASSIGN(auto found, lines());
    m_written.clear();
    return found;
}

Result<QByteArray> RowWatch::lines()
{
    QByteArray lines, bytes;
    for (const auto &[table, ids] : m_written) {
        LOOPWRIGHT_ASSIGN(auto statement, rowOf(m_connection, table));
        for (const qint64 id : ids) {
            statement.restart(id);
            LOOPWRIGHT_ASSIGN(const auto there, statement.next());
            lines += QByteArray::fromStdString(table) + ' ' + QByteArray::number(id) + ' ';
            if (!there) {
                lines += removedRow;
            } else {
                bytes.clear();
                statement.appendColumns(bytes, 0);
                lines += view(m_sha.hexOf(bytes));
            }
            lines += '\n';
        }
    }
    return lines;
}

} // namespace loopwright
