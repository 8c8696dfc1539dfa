#include "db/EventStore.h"

#include "db/MetaStore.h"
#include "db/Statement.h"

namespace loopwright {

Event EventStore::read(const Statement &row)
{
    Event event;
    event.subject = row.text("subject");
    event.order = row.text("order_number");
    event.by = row.text("actor");
    event.at = row.moment("at");
    event.recordedAt = row.moment("recorded");
    event.kind = row.text("kind");
    event.detail = row.json("detail");
    event.sequence = row.integer("sequence");
    event.previous = row.text("previous");
    event.digest = row.text("digest");
    event.logPosition = row.integer("log_position");
    event.logDigest = row.text("log_digest");
    return event;
}

Result<std::vector<Event>> EventStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "event.of_order");
    statement.bind("order_number", order);
    return rows(statement, read);
}

Result<std::vector<Event>> EventStore::ofCircuit(const QString &circuit) const
{
    Statement statement(m_database, "event.of_subject");
    statement.bind("subject", circuitSubject(circuit));
    return rows(statement, read);
}

Result<qint64> EventStore::count() const
{
    Statement statement(m_database, "event.count");
    const auto found =
        firstRow(statement, [](const Statement &row) { return row.integer("events"); });
    if (!found)
        return failure(found.error());
    return found->value_or(0);
}

Result<LogHead> EventStore::logHead() const
{
    LOOPWRIGHT_ASSIGN(const auto station, MetaStore(m_database).station());
    Statement statement(m_database, "event.log_head");
    const auto found = firstRow(statement, [&station](const Statement &row) {
        return LogHead{station, row.integer("log_position"), row.text("log_digest"),
                       row.moment("recorded")};
    });
    if (!found)
        return failure(found.error());
    return found->value_or(LogHead{station, 0, {}, {}});
}

Result<HistoryChain> EventStore::chainOf(const QString &subject) const
{
    Statement statement(m_database, "event.head");
    statement.bind("subject", subject);
    const auto known = firstRow(statement, [&](const Statement &row) {
        return HistoryChain(subject, row.integer("events"), row.text("digest"));
    });
    if (!known)
        return failure(known.error());
    return known->value_or(HistoryChain(subject));
}

} // namespace loopwright
