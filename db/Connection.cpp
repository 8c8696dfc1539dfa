#include "db/Connection.h"

namespace loopwright {

Result<void> PreparedStatement::write()
{
    LOOPWRIGHT_TRY(step());
    rewind();
    return {};
}

Result<QString> Connection::text(const QByteArray &sql)
{
    LOOPWRIGHT_ASSIGN(const auto found, texts(sql));
    return found.value(0);
}

Result<qint64> Connection::number(const QByteArray &sql)
{
    LOOPWRIGHT_ASSIGN(const auto found, text(sql));
    return found.toLongLong();
}

Result<std::unique_ptr<PreparedStatement>> Connection::lend(std::string_view label,
                                                            const std::string &sql)
{
    const auto idle = m_idle.find(label);
    if (idle == m_idle.end() || idle->second.empty())
        return prepare(label, sql);
    auto statement = std::move(idle->second.back());
    idle->second.pop_back();
    return statement;
}

void Connection::giveBack(std::unique_ptr<PreparedStatement> statement)
{
    statement->clear();
    m_idle[statement->label()].push_back(std::move(statement));
}

void Connection::rollBack()
{
    // The engine may have done it already, when the disk was full.
    if (inTransaction())
        (void)run("ROLLBACK", "rollback");
}

void Connection::interrupt()
{
    m_interrupted = true;
    breakOff();
}

Result<void> Connection::mayStart() const
{
    if (m_interrupted)
        return failure(ErrorCode::Refused, "was cancelled", m_path);
    return {};
}

void Connection::tellWaiting() const
{
    if (m_waiting)
        m_waiting();
}

ReadSnapshot::ReadSnapshot(Connection &connection)
    : m_connection(connection)
    , m_started(!connection.inTransaction())
{
    if (m_started)
        m_result = connection.beginReading();
}

ReadSnapshot::~ReadSnapshot()
{
    if (m_started)
        m_connection.rollBack();
}

} // namespace loopwright
