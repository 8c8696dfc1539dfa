#include "db/RawStatement.h"

#include "db/SqlCatalog.h"

#include <algorithm>
#include <cstring>
#include <sqlite3.h>
#include <utility>

namespace loopwright {

namespace {

char letterOf(int type)
{
    return char('0' + type);
}

/// Makes room for a type, a number and so many bytes, and writes the first two.
char *appendHead(QByteArray &out, int type, qint64 number, qsizetype more)
{
    static_assert(Q_BYTE_ORDER == Q_LITTLE_ENDIAN, "goes into digests as it lies in memory");
    const qsizetype before = out.size();
    out.resize(before + 1 + qsizetype(sizeof number) + more);
    char *to = out.data() + before;
    *to++ = letterOf(type);
    std::memcpy(to, &number, sizeof number);
    return to + sizeof number;
}

void appendNumber(QByteArray &out, int type, qint64 value)
{
    appendHead(out, type, value, 0);
}

void appendBytes(QByteArray &out, int type, QByteArrayView bytes)
{
    char *to = appendHead(out, type, bytes.size(), bytes.size());
    std::copy(bytes.begin(), bytes.end(), to);
}

} // namespace

RawStatement::RawStatement(SqliteConnection &connection,
                           std::unique_ptr<PreparedStatement> statement)
    : m_connection(&connection)
    , m_statement(std::move(statement))
{
}

RawStatement::~RawStatement()
{
    if (m_statement)
        m_connection->giveBack(std::move(m_statement));
}

Result<RawStatement> RawStatement::of(SqliteConnection &connection, const std::string &label,
                                      const std::string &sql)
{
    LOOPWRIGHT_ASSIGN(auto prepared, connection.lend(label, sql));
    LOOPWRIGHT_TRY(connection.mayStart());
    return RawStatement(connection, std::move(prepared));
}

Result<RawStatement> RawStatement::of(SqliteConnection &connection, const std::string &label)
{
    return of(connection, label, *SqlCatalog::embedded().statement(label));
}

void RawStatement::restart(qint64 first)
{
    sqlite3_reset(m_statement->handle);
    sqlite3_bind_int64(m_statement->handle, 1, first);
}

Result<bool> RawStatement::next()
{
    const int code = sqlite3_step(m_statement->handle);
    if (code != SQLITE_ROW && code != SQLITE_DONE)
        return failure(m_connection->lastError(QString::fromStdString(m_statement->label)));
    return code == SQLITE_ROW;
}

QByteArrayView RawStatement::bytes(int column) const
{
    const auto *data = static_cast<const char *>(sqlite3_column_blob(m_statement->handle, column));
    return QByteArrayView(data, sqlite3_column_bytes(m_statement->handle, column));
}

qint64 RawStatement::integer(int column) const
{
    return sqlite3_column_int64(m_statement->handle, column);
}

void RawStatement::appendColumns(QByteArray &out, int first) const
{
    const int columns = sqlite3_data_count(m_statement->handle);
    for (int i = first; i < columns; ++i) {
        const int type = sqlite3_column_type(m_statement->handle, i);
        if (type == SQLITE_INTEGER)
            appendNumber(out, type, integer(i));
        else if (type == SQLITE_NULL)
            out += letterOf(type);
        else
            appendBytes(out, type, bytes(i));
    }
}

} // namespace loopwright
