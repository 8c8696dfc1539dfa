#include "db/EventStore.h"

#include "db/Statement.h"

namespace loopwright {

Event EventStore::read(const Statement &row)
{
    Event event = readChain(row);
    event.logPosition = row.integer("log_position");
    event.logDigest = row.text("log_digest");
    return event;
}

void EventStore::bindChain(Statement &add, const Event &event)
{
    add.bind("subject", event.subject)
        .bind("sequence", event.sequence)
        .bind("order_number", event.order)
        .bind("by", event.by)
        .bindMoment("at", event.at)
        .bindMoment("recorded", event.recordedAt)
        .bind("kind", event.kind)
        .bindJson("detail", event.detail)
        .bind("previous", event.previous)
        .bind("digest", event.digest);
}

Event EventStore::readChain(const Statement &row)
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

Result<qint64> EventStore::registerChanges() const
{
    Statement statement(m_database, "event.register_changes");
    const auto changes =
        firstRow(statement, [](const Statement &row) { return row.integer("changes"); });
    if (!changes)
        return failure(changes.error());
    return changes->value_or(0);
}

Result<std::vector<Event>> EventStore::ofRegister(const QString &kind) const
{
    Statement statement(m_database, "event.of_register");
    statement.bind("kind", kind);
    return rows(statement, read);
}

Result<void> EventStore::each(qint64 first, qint64 last,
                              const std::function<Result<void>(const Event &)> &visit) const
{
    Statement statement(m_database, "event.between");
    statement.bind("first", first).bind("last", last);
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto event, firstRow(statement, read));
        if (!event)
            return {};
        LOOPWRIGHT_TRY(visit(*event));
    }
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
    Statement statement(m_database, "event.log_head");
    const auto found = firstRow(statement, [](const Statement &row) {
        LogHead head{row.text("station"), 0, {}, {}};
        if (!row.isNull("log_position"))
            head = {head.station, row.integer("log_position"), row.text("log_digest"),
                    row.moment("recorded")};
        return head;
    });
    if (!found)
        return failure(found.error());
    if (!*found)
        return failure(ErrorCode::DatabaseTrouble, "the database does not say its station",
                       m_database.path());
    return **found;
}

Result<std::optional<LogHead>> EventStore::headAt(qint64 position) const
{
    Statement statement(m_database, "event.in_log");
    statement.bind("log_position", position);
    return firstRow(statement, [position](const Statement &row) {
        return LogHead{row.text("station"), position, row.text("log_digest"),
                       row.moment("recorded")};
    });
}

Result<QString> EventStore::logDigests(qint64 first, qint64 last, int digits) const
{
    Statement statement(m_database, "event.log_digests");
    statement.bind("first", first).bind("last", last).bind("digits", digits);
    LOOPWRIGHT_ASSIGN(const auto found, texts(statement, "digest"));
    return found.join(QString());
}

Result<qint64> EventStore::placeInLog(const QString &subject, qint64 sequence) const
{
    Statement statement(m_database, "event.place_in_log");
    statement.bind("subject", subject).bind("sequence", sequence);
    const auto found =
        firstRow(statement, [](const Statement &row) { return row.integer("log_position"); });
    if (!found)
        return failure(found.error());
    return found->value_or(0);
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
