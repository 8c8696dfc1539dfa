#include "db/Transaction.h"

#include "core/base/Json.h"
#include "core/history/HistoryChain.h"
#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/Statement.h"

#include <QDateTime>

#include <utility>

namespace loopwright {

namespace {

Moment realClock()
{
    const QDateTime now = QDateTime::currentDateTime();
    return {now.toMSecsSinceEpoch(), now.offsetFromUtc()};
}

/// What a commit that the program itself got wrong is answered with.
tl::unexpected<Error> misuse(const QString &message)
{
    return failure(ErrorCode::Usage, message, "history");
}

} // namespace

Transaction::Transaction(WriteLock lock)
    : WriteLock(std::move(lock))
    , m_changesBefore(connection().rowsChanged())
    , m_rows(std::make_unique<RowWatch>(connection()))
{
}

Result<Transaction> Transaction::begin(Database &database)
{
    LOOPWRIGHT_ASSIGN(auto lock, take(database));
    return Transaction(std::move(lock));
}

void Transaction::seal(const QString &subject, const Seal &seal)
{
    m_seals[subject].push_back(seal);
}

Result<void> Transaction::commit(const Event &event)
{
    return commit(std::vector<Event>{event});
}

Result<void> Transaction::commit(const std::vector<Event> &events)
{
    if (!isOpen())
        return misuse("the transaction has ended already");
    if (events.empty() && !m_hasEvents)
        return misuse("a change needs an event");
    connection().foresee([&] {
        for (const Event &event : events)
            (void)EventStore(database()).chainOf(event.subject);
        if (!m_head)
            (void)EventStore(database()).logHead();
    });
    for (const Event &event : events)
        LOOPWRIGHT_TRY(append(event));
    if (!m_seals.empty())
        return misuse("rows of " + m_seals.begin()->first + " were written without an event");
    LOOPWRIGHT_ASSIGN(const auto unsealed, m_rows->someTable());
    if (!unsealed.isEmpty())
        return misuse("rows of " + unsealed + " were written without an event");
    return keepEvents();
}

Result<void> Transaction::keepEvents()
{
    const auto kept = keep();
    return kept || kept.error().code != ErrorCode::ConnectionLost ? kept
                                                                  : lookAfterLoss(kept.error());
}

Result<void> Transaction::lookAfterLoss(const Error &lost)
{
    connection().rollBack();
    // The server may be at it still: it holds the lock until it is done, one way or the other.
    if (const auto begun = connection().beginChange(); !begun)
        return failure(ErrorCode::OutcomeUnknown,
                       "the connection to the server was lost at the last step, and it cannot be "
                       "asked whether the change was kept: look whether it is there before it is "
                       "entered again",
                       connection().path());
    const auto there = EventStore(database()).headAt(m_head->position);
    connection().rollBack();
    if (there && *there && (*there)->digest == m_head->digest)
        return {};
    return failure(there ? lost : there.error());
}

Result<void> Transaction::record(const Event &event)
{
    if (!isOpen())
        return misuse("the transaction has ended already");
    LOOPWRIGHT_TRY(append(event));
    m_hasEvents = true;
    return {};
}

Result<void> Transaction::append(Event event)
{
    if (event.by.isEmpty() || event.kind.isEmpty() || event.subject.isEmpty())
        return misuse("an event needs its subject, its kind and who did it");
    if (!m_recordedAt)
        m_recordedAt = realClock();
    event.recordedAt = *m_recordedAt;
    // Whoever is named, the server says who was logged in (event_names_login).
    if (const auto login = connection().login(); login && login->name != event.by)
        event.detail.insert("session_user", login->name);
    if (const auto seals = m_seals.find(event.subject); seals != m_seals.end()) {
        event.addSeals(seals->second);
        m_seals.erase(seals);
    }
    LOOPWRIGHT_ASSIGN(const auto known, EventStore(database()).chainOf(event.subject));
    HistoryChain chain = known;
    event = chain.append(event);
    LOOPWRIGHT_ASSIGN(const auto sealed, appendToLog(event));
    Statement add(*this, "event.add");
    EventStore::bindChain(add, event);
    add.bind("log_position", event.logPosition)
        .bind("station", m_head->station)
        .bindBytes("sealed", sealed)
        .bind("log_digest", event.logDigest);
    LOOPWRIGHT_TRY(add.write());
    Statement setHead(*this, "event.set_head");
    setHead.bind("subject", chain.subject())
        .bind("events", chain.length())
        .bind("digest", chain.head());
    LOOPWRIGHT_TRY(setHead.write());
    return {};
}

Result<void> Transaction::readHead()
{
    LOOPWRIGHT_ASSIGN(m_head, EventStore(database()).logHead());
    return m_head->position > 0 ? Result<void>() : m_rows->noteAll("meta");
}

Result<QByteArray> Transaction::appendToLog(Event &event)
{
    if (!m_head)
        LOOPWRIGHT_TRY(readHead());
    LOOPWRIGHT_ASSIGN(const auto sealed, m_rows->takeLines());
    event.logPosition = m_head->position + 1;
    QByteArray bytes;
    LogLink{m_head->station.toUtf8(), m_head->digest.toLatin1(), event.digest.toLatin1(), sealed,
            event.logPosition}
        .appendTo(bytes);
    event.logDigest = sha256Hex(bytes);
    m_head = LogHead{m_head->station, event.logPosition, event.logDigest, event.recordedAt};
    return sealed;
}

Result<void> Transaction::commitDraft()
{
    if (!isOpen())
        return misuse("the transaction has ended already");
    const qint64 changed = connection().rowsChanged() - m_changesBefore;
    if (changed != m_draftChanges)
        return misuse("more than drafts was changed, and that needs an event");
    return keep();
}

} // namespace loopwright
