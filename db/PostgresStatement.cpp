#include "db/PostgresStatement.h"

#include "db/RowSeals.h"

#include <QLocale>

#include <algorithm>
#include <libpq-fe.h>

namespace loopwright {

namespace {

// Types by their OIDs (PostgreSQL 15, pg_type.dat); libpq has no header for them.
constexpr Oid boolType = 16, int8Type = 20, int2Type = 21, int4Type = 23, float4Type = 700,
              float8Type = 701, numericType = 1700;

/// Of a walk over a whole table, at once.
constexpr int rowsOfAPiece = 2000;

constexpr std::string_view walks[] = {"event.log", "foreign.all_events", "export.", "rows."};

} // namespace

PostgresStatement::PostgresStatement(PostgresSession &session, std::string label, PostgresSql sql)
    : PreparedStatement(std::move(label), sql.parameters)
    , m_session(session)
    , m_sql(std::move(sql))
    , m_values(m_sql.parameters.size())
    , m_types(m_sql.parameters.size())
{
}

const std::vector<std::string> &PostgresStatement::columns()
{
    // The server tells them with the answer, which the next step gives out.
    if (!m_answer.get() && !m_sql.changesRows)
        (void)ask(); // what goes wrong comes out of step()
    return m_columns;
}

void PostgresStatement::set(int parameter, const QByteArray &text, unsigned type)
{
    rewind();
    const auto place = std::size_t(parameter - 1);
    m_values[place] = text.isNull() ? QByteArray("") : text;
    m_types[place] = type;
}

void PostgresStatement::bind(int parameter, qint64 value)
{
    set(parameter, QByteArray::number(value), int8Type);
}

void PostgresStatement::bind(int parameter, double value)
{
    set(parameter, QByteArray::number(value, 'g', QLocale::FloatingPointShortest), float8Type);
}

void PostgresStatement::bind(int parameter, QByteArrayView utf8)
{
    // Of no type: the server takes it for what stands beside it (text, json).
    set(parameter, utf8.toByteArray(), 0);
}

void PostgresStatement::bindNull(int parameter)
{
    rewind();
    m_values[std::size_t(parameter - 1)] = {};
}

std::optional<PostgresAnswer> PostgresStatement::askedBefore() const
{
    PostgresReads &reads = m_session.reads();
    if (!reads.isKeeping() || m_sql.changesRows)
        return std::nullopt;
    if (const PostgresAnswer *kept = reads.find(question().key()))
        return *kept;
    if (!reads.isForeseeing())
        return std::nullopt;
    reads.want(question());
    return PostgresAnswer(PQmakeEmptyPGresult(nullptr, PGRES_TUPLES_OK));
}

PostgresMessage PostgresStatement::message() const
{
    return {.question = question(),
            .doing = QString::fromStdString(label()),
            .changesRows = m_sql.changesRows};
}

Result<void> PostgresStatement::mayChange() const
{
    return m_sql.changesRows && m_session.reads().isForeseeing()
               ? failure(ErrorCode::Refused, "What is foreseen changes nothing.")
               : Result<void>();
}

void PostgresStatement::noteChange()
{
    m_session.reads().forget(m_sql.text);
    if (isSealedTable(tableWritten(m_sql.text)))
        m_session.noteWritten();
}

Result<void> PostgresStatement::write()
{
    LOOPWRIGHT_TRY(mayChange());
    LOOPWRIGHT_TRY(m_session.askLater(message()));
    noteChange();
    rewind();
    return {};
}

/// A cursor lives in a transaction; within a change, answers are kept whole.
bool PostgresStatement::comesInPieces() const
{
    return !m_sql.changesRows && m_session.inTransaction() && !m_session.reads().isKeeping() &&
           std::ranges::any_of(walks,
                               [this](std::string_view walk) { return label().starts_with(walk); });
}

Result<PostgresAnswer> PostgresStatement::askForPieces()
{
    m_cursor = m_session.newName();
    PostgresMessage declares = message();
    declares.once = true;
    declares.question.text.insert(0, "DECLARE " + m_cursor + " CURSOR FOR ");
    LOOPWRIGHT_TRY(m_session.askLater(std::move(declares)));
    return nextPiece();
}

Result<PostgresAnswer> PostgresStatement::nextPiece()
{
    const std::string fetch = "FETCH " + std::to_string(rowsOfAPiece) + " FROM " + m_cursor;
    return m_session.ask(plainMessage(fetch.c_str(), QString::fromStdString(label())));
}

Result<void> PostgresStatement::ask()
{
    LOOPWRIGHT_TRY(mayChange());
    if (const auto known = askedBefore()) {
        m_answer = *known;
    } else if (comesInPieces()) {
        LOOPWRIGHT_ASSIGN(m_answer, askForPieces());
    } else {
        LOOPWRIGHT_ASSIGN(m_answer, m_session.ask(message()));
        if (!m_sql.changesRows && m_session.reads().isKeeping())
            m_session.reads().keep(question(), m_answer);
    }
    m_rows = PQntuples(m_answer.get());
    m_row = -1;
    if (m_sql.changesRows) {
        m_changed = QByteArray(PQcmdTuples(m_answer.get())).toLongLong();
        m_session.countChanged(m_changed);
        noteChange();
    }
    m_columns.clear();
    for (int i = 0; i < PQnfields(m_answer.get()); ++i)
        m_columns.emplace_back(PQfname(m_answer.get(), i));
    return {};
}

Result<bool> PostgresStatement::step()
{
    if (!m_answer.get())
        LOOPWRIGHT_TRY(ask());
    if (++m_row < m_rows)
        return true;
    if (m_cursor.empty() || m_rows < rowsOfAPiece)
        return false;
    LOOPWRIGHT_ASSIGN(m_answer, nextPiece());
    m_rows = PQntuples(m_answer.get());
    m_row = 0;
    return m_rows > 0;
}

void PostgresStatement::rewind()
{
    m_cursor.clear(); // it ends with its transaction
    m_answer.drop();
    m_row = -1;
}

void PostgresStatement::clear()
{
    rewind();
    for (QByteArray &each : m_values)
        each = QByteArray();
}

PreparedStatement::Type PostgresStatement::type(int column) const
{
    if (PQgetisnull(m_answer.get(), m_row, column) != 0)
        return Type::Null;
    switch (PQftype(m_answer.get(), column)) {
    case boolType:
    case int2Type:
    case int4Type:
    case int8Type:
        return Type::Integer;
    case float4Type:
    case float8Type:
    case numericType:
        return Type::Real;
    default:
        return Type::Text;
    }
}

QByteArrayView PostgresStatement::text(int column) const
{
    const QByteArrayView found(PQgetvalue(m_answer.get(), m_row, column),
                               PQgetlength(m_answer.get(), m_row, column));
    if (PQftype(m_answer.get(), column) != boolType || found.isEmpty())
        return found;
    return found == "t" ? QByteArrayView("1") : QByteArrayView("0");
}

qint64 PostgresStatement::integer(int column) const
{
    // A sum is numeric, and may be told as 12 or 12.000.
    const QByteArrayView digits = text(column);
    const auto point = digits.indexOf('.');
    return (point < 0 ? digits : digits.first(point)).toByteArray().toLongLong();
}

double PostgresStatement::real(int column) const
{
    return text(column).toByteArray().toDouble();
}

} // namespace loopwright
