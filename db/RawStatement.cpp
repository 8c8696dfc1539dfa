#include "db/RawStatement.h"

#include "db/SqlCatalog.h"

#include <algorithm>
#include <cstring>
#include <utility>

namespace loopwright {

namespace {

char letterOf(PreparedStatement::Type type)
{
    return char('0' + int(type));
}

/// Makes room for a type, a number and so many bytes, and writes the first two.
char *appendHead(QByteArray &out, PreparedStatement::Type type, qint64 number, qsizetype more)
{
    static_assert(Q_BYTE_ORDER == Q_LITTLE_ENDIAN, "goes into digests as it lies in memory");
    const qsizetype before = out.size();
    out.resize(before + 1 + qsizetype(sizeof number) + more);
    char *to = out.data() + before;
    *to++ = letterOf(type);
    std::memcpy(to, &number, sizeof number);
    return to + sizeof number;
}

void appendNumber(QByteArray &out, PreparedStatement::Type type, qint64 value)
{
    appendHead(out, type, value, 0);
}

void appendBytes(QByteArray &out, PreparedStatement::Type type, QByteArrayView bytes)
{
    char *to = appendHead(out, type, bytes.size(), bytes.size());
    std::copy(bytes.begin(), bytes.end(), to);
}

} // namespace

RawStatement::RawStatement(Connection &connection, std::unique_ptr<PreparedStatement> statement)
    : m_connection(&connection)
    , m_statement(std::move(statement))
{
}

RawStatement::~RawStatement()
{
    if (m_statement)
        m_connection->giveBack(std::move(m_statement));
}

Result<RawStatement> RawStatement::of(Connection &connection, const std::string &label,
                                      const std::string &sql)
{
    LOOPWRIGHT_ASSIGN(auto prepared, connection.lend(label, sql));
    LOOPWRIGHT_TRY(connection.mayStart());
    return RawStatement(connection, std::move(prepared));
}

Result<RawStatement> RawStatement::of(Connection &connection, const std::string &label)
{
    return of(connection, label, *connection.catalog().statement(label));
}

void RawStatement::restart(qint64 first)
{
    m_statement->rewind();
    m_statement->bind(1, first);
}

Result<bool> RawStatement::next()
{
    return m_statement->step();
}

QByteArrayView RawStatement::bytes(int column) const
{
    return m_statement->text(column);
}

qint64 RawStatement::integer(int column) const
{
    return m_statement->integer(column);
}

void RawStatement::appendColumns(QByteArray &out, int first) const
{
    using Type = PreparedStatement::Type;
    const int columns = int(m_statement->columns().size());
    for (int i = first; i < columns; ++i) {
        const Type type = m_statement->type(i);
        if (type == Type::Integer)
            appendNumber(out, type, integer(i));
        else if (type == Type::Null)
            out += letterOf(type);
        else
            appendBytes(out, type, bytes(i));
    }
}

} // namespace loopwright
