#include "db/ForeignStore.h"

#include "db/EventStore.h"
#include "db/Statement.h"

#include <algorithm>

namespace loopwright {

namespace {

ForeignEvent readForeign(const Statement &row)
{
    return {row.text("station"), EventStore::readChain(row)};
}

FactOrigin readOrigin(const Statement &row)
{
    return {row.text("fact"), row.text("station"), row.text("name"), row.text("pair"),
            row.boolean("ahead")};
}

QString chainName(const ForeignEvent &foreign)
{
    return foreign.event.subject + " of station " + foreign.station;
}

} // namespace

Result<std::vector<ForeignEvent>> ForeignStore::eventsOfOrder(const QString &order) const
{
    Statement statement(m_database, "foreign.events_of_order");
    statement.bind("order_number", order);
    return rows(statement, readForeign);
}

Result<std::vector<Event>> ForeignStore::chainOf(const QString &station,
                                                 const QString &subject) const
{
    Statement statement(m_database, "foreign.chain");
    statement.bind("station", station).bind("subject", subject);
    return rows(statement, EventStore::readChain);
}

Result<std::vector<FactOrigin>> ForeignStore::originsOf(const QString &order) const
{
    Statement statement(m_database, "foreign.facts_of_order");
    statement.bind("order_number", order);
    return rows(statement, readOrigin);
}

Result<std::vector<FactOrigin>> ForeignStore::tellersOf(const QString &order) const
{
    Statement statement(m_database, "foreign.tellers_of_order");
    statement.bind("order_number", order);
    return rows(statement, readOrigin);
}

Result<void> ForeignStore::check(const std::function<void(const HistoryFault &)> &report) const
{
    Statement statement(m_database, "foreign.all_events");
    std::optional<ForeignEvent> before;
    for (;;) {
        LOOPWRIGHT_ASSIGN(auto row, firstRow(statement, readForeign));
        if (!row)
            break;
        const Event &event = row->event;
        const bool follows = before && before->station == row->station &&
                             before->event.subject == event.subject &&
                             before->event.sequence + 1 == event.sequence;
        if (event.computedDigest() != event.digest)
            report({chainName(*row), event.sequence, "is not what its digest says"});
        else if (follows ? event.previous != before->event.digest
                         : event.sequence == 1 && !event.previous.isEmpty())
            report({chainName(*row), event.sequence, "does not follow the event before it"});
        before = std::move(row);
    }
    return checkJoins(report);
}

Result<void> ForeignStore::checkJoins(const std::function<void(const HistoryFault &)> &report) const
{
    Statement statement(m_database, "foreign.joins");
    statement.bind("kind", joinedKind);
    const auto joins = rows(statement, [](const Statement &row) {
        Event event;
        event.subject = row.text("subject");
        event.sequence = row.integer("sequence");
        event.detail = row.json("detail");
        return event;
    });
    if (!joins)
        return failure(joins.error());
    for (const Event &join : *joins) {
        const QString station = join.detail.value("station").toString();
        const auto events = qint64(join.detail.value("events").toDouble());
        Statement last(m_database, "foreign.digest");
        last.bind("station", station).bind("subject", join.subject).bind("sequence", events);
        LOOPWRIGHT_ASSIGN(const auto digest,
                          firstRow(last, [](const Statement &row) { return row.text("digest"); }));
        if (digest != join.detail.value("head").toString())
            report({join.subject, join.sequence,
                    QString("joined %1 events of station %2, and they are not there as they came")
                        .arg(events)
                        .arg(station)});
    }
    return {};
}

Result<void> ForeignStore::add(Transaction &transaction, const ForeignEvent &foreign)
{
    Statement add(transaction, "foreign.add_event");
    add.bind("station", foreign.station);
    EventStore::bindChain(add, foreign.event);
    LOOPWRIGHT_TRY(add.write());
    return {};
}

Result<void> ForeignStore::add(Transaction &transaction, const FactOrigin &origin)
{
    Statement add(transaction, "foreign.add_fact");
    add.bind("fact", origin.fact)
        .bind("station", origin.station)
        .bind("pair", origin.pair)
        .bind("ahead", origin.ahead);
    LOOPWRIGHT_TRY(add.write());
    return {};
}

} // namespace loopwright
