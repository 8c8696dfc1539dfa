#include "db/HistoryCheck.h"

#include "core/base/Json.h"
#include "db/EventStore.h"
#include "db/SqliteConnection.h"
#include "db/Statement.h"

#include <QSet>

namespace loopwright {

namespace {

/// Rows whose stored bytes are what the digest was taken over.
constexpr std::string_view storedContents[] = {"history.facts",      "history.decision_inputs",
                                               "history.decisions",  "history.certificates",
                                               "history.limit_sets", "history.orders"};

class Check
{
public:
    Check(const Database &database, const CheckProgress &progress)
        : m_database(database)
        , m_progress(progress)
    {
    }

    Result<HistoryFindings> run()
    {
        LOOPWRIGHT_TRY(followChains());
        LOOPWRIGHT_TRY(findHeadsWithoutEvents());
        for (const std::string_view label : storedContents)
            LOOPWRIGHT_TRY(compareContents(label));
        LOOPWRIGHT_TRY(compareContents("history.register"));
        LOOPWRIGHT_TRY(compareSeals());
        return m_findings;
    }

private:
    bool full() const { return m_findings.faults.size() >= HistoryFindings::maxFaults; }
    void add(const QString &subject, qint64 event, const QString &what)
    {
        if (!full())
            m_findings.faults.push_back({subject, event, what});
    }
    /// Only the first fault of a chain is named: what follows a broken link says little.
    void addLink(const QString &subject, qint64 event, const QString &what)
    {
        if (m_brokenChain != subject)
            add(subject, event, what);
        m_brokenChain = subject;
    }

    Result<void> followChains();
    Result<void> endChain(const HistoryChain &chain);
    Result<void> findHeadsWithoutEvents();
    Result<void> compareContents(std::string_view label);
    Result<void> addRow(const QString &row, const QString &id, const QString &what);
    Result<void> compareSeals();

    const Database &m_database;
    const CheckProgress &m_progress;
    HistoryFindings m_findings;
    QString m_brokenChain;
    QSet<QString> m_namedRows; ///< "row id"
};

Result<void> Check::followChains()
{
    LOOPWRIGHT_ASSIGN(const auto all, EventStore(m_database).count());
    Statement statement(m_database, "event.all");
    std::optional<HistoryChain> chain;
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            break;
        const Event event = EventStore::read(statement);
        if (!chain || chain->subject() != event.subject) {
            if (chain)
                LOOPWRIGHT_TRY(endChain(*chain));
            chain.emplace(event.subject);
        }
        const auto wrong = chain->follow(event);
        if (statement.takeTrouble())
            addLink(event.subject, event.sequence, "event cannot be read");
        else if (wrong)
            addLink(event.subject, event.sequence, "event " + *wrong);
        const qint64 done = ++m_findings.events;
        if (m_progress && done % 4096 == 0 && !m_progress(done, all))
            return failure(ErrorCode::Refused, "was cancelled");
    }
    return chain ? endChain(*chain) : Result<void>();
}

Result<void> Check::endChain(const HistoryChain &chain)
{
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(m_database).chainOf(chain.subject()));
    if (head.head() != chain.head() || head.length() != chain.length())
        addLink(chain.subject(), chain.length(),
                QString("the chain should end with event %1, and ends with this one otherwise")
                    .arg(head.length()));
    return {};
}

Result<void> Check::findHeadsWithoutEvents()
{
    Statement statement(m_database, "history.heads_without_events");
    const auto subjects = rows(statement, [](const Statement &row) { return row.text("subject"); });
    if (!subjects)
        return failure(subjects.error());
    for (const QString &subject : *subjects)
        add(subject, 0, "all events of the chain are missing");
    return {};
}

Result<void> Check::compareContents(std::string_view label)
{
    const bool isDocument = label == "history.register"; // not stored, so not canonical yet
    Statement statement(m_database, label);
    while (!full()) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return {};
        const QString digest = isDocument ? digestOf(statement.json("content"))
                                          : sha256Hex(statement.bytes("content"));
        if (digest != statement.text("digest") || !statement.boolean("agrees"))
            LOOPWRIGHT_TRY(addRow(statement.text("row"), statement.text("id"),
                                  "was changed after it was recorded"));
    }
    return {};
}

Result<void> Check::addRow(const QString &row, const QString &id, const QString &what)
{
    Statement statement(m_database, "history.sealed_by");
    statement.bind("row", row).bind("id", id);
    const auto seal = firstRow(statement, [](const Statement &found) {
        return std::pair(found.text("subject"), found.integer("sequence"));
    });
    if (!seal)
        return failure(seal.error());
    const auto [subject, sequence] = seal->value_or(std::pair(QString(), qint64(0)));
    m_namedRows.insert(row + ' ' + id);
    add(subject, sequence, QString("%1 %2 %3").arg(row, id, what));
    return {};
}

Result<void> Check::compareSeals()
{
    Statement statement(m_database, "history.disagreements");
    while (!full()) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return {};
        const QString row = statement.text("row");
        const QString id = statement.text("id");
        if (!m_namedRows.contains(row + ' ' + id))
            add(statement.text("subject"), statement.integer("sequence"),
                QString("%1 %2 %3").arg(row, id, statement.text("what")));
    }
    return {};
}

} // namespace

Result<HistoryFindings> checkHistory(const Database &database, const CheckProgress &progress)
{
    const ReadSnapshot snapshot(database.connection());
    LOOPWRIGHT_TRY(snapshot.result());
    return Check(database, progress).run();
}

} // namespace loopwright
