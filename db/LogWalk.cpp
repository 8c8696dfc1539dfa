#include "db/LogWalk.h"

#include "core/history/Event.h"
#include "core/history/StationLog.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Restored records become a station of their own; so do those whose key was lost.
bool mayStartStation(QByteArrayView kind)
{
    return kind == QByteArrayView("restored") || kind == QByteArrayView("keys_renewed");
}

constexpr qint64 eventsBetweenReports = 4096;

} // namespace

struct LogWalk::Row
{
    explicit Row(const RawStatement &statement) // columns as in event.log
        : position(statement.integer(0))
        , content{statement.bytes(1),    statement.bytes(2),   statement.bytes(3),
                  statement.bytes(4),    statement.bytes(5),   statement.bytes(6),
                  statement.bytes(7),    statement.bytes(8),   statement.integer(9),
                  statement.integer(10), statement.integer(11)}
        , digest(statement.bytes(12))
        , station(statement.bytes(13))
        , sealed(statement.bytes(14))
        , logDigest(statement.bytes(15))
    {
    }

    qint64 position;
    EventBytes content;
    QByteArrayView digest, station, sealed, logDigest;
};

Result<void> LogWalk::run(const CheckProgress &progress)
{
    LOOPWRIGHT_ASSIGN(const auto all, m_connection.number("SELECT count(*) FROM event"));
    LOOPWRIGHT_ASSIGN(auto statement, RawStatement::of(m_connection, "event.log"));
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return compareHeads();
        follow(Row(statement));
        if (++m_events % eventsBetweenReports == 0 && progress && !progress(m_events, all))
            return failure(ErrorCode::Refused, "was cancelled");
    }
}

void LogWalk::follow(const Row &row)
{
    const QString inChain = wrongInChain(row);
    const QString inLog = wrongInLog(row);
    const qint64 sequence = row.content.sequence;
    if (!inChain.isEmpty())
        reportLink(row.content.subject, sequence, inChain);
    else if (!inLog.isEmpty())
        m_report({QString::fromUtf8(row.content.subject), sequence, inLog});
    if (!m_rows.take(row.sealed, row.position) && inLog.isEmpty())
        m_report({QString::fromUtf8(row.content.subject), sequence,
                  "the rows that the event sealed cannot be read"});
}

QString LogWalk::wrongInChain(const Row &row)
{
    const EventBytes &event = row.content;
    m_bytes.resize(0);
    event.appendTo(m_bytes);
    const bool intact = view(m_sha.hexOf(m_bytes)) == row.digest;
    // Raw data: most subjects are known, and a key of its own would be made for each event.
    const auto key = QByteArray::fromRawData(event.subject.data(), event.subject.size());
    auto known = m_chains.find(key);
    if (known == m_chains.end())
        known = m_chains.insert(event.subject.toByteArray(), Link());
    Link &link = *known;
    const qint64 expected = link.sequence + 1;
    const bool linked =
        expected == 1 ? event.previous.isEmpty() : event.previous == view(link.digest);
    link.sequence = event.sequence;
    link.digest.fill(' ');
    std::copy_n(row.digest.begin(), std::min<qsizetype>(row.digest.size(), 64),
                link.digest.begin());
    if (event.sequence != expected)
        return QString("event %1 was expected here").arg(expected);
    if (!intact)
        return "event was changed after it was recorded";
    return linked ? QString() : "event does not follow the event before it";
}

QString LogWalk::wrongInLog(const Row &row)
{
    m_bytes.resize(0);
    LogLink{row.station, m_logDigest, row.digest, row.sealed, row.position}.appendTo(m_bytes);
    const bool linked = view(m_sha.hexOf(m_bytes)) == row.logDigest;
    const qint64 expected = m_position + 1;
    const bool sameStation =
        row.station == m_station || expected == 1 || mayStartStation(row.content.kind);
    m_position = row.position;
    m_station.resize(0); // keeps the memory
    m_station += row.station;
    m_logDigest.resize(0);
    m_logDigest += row.logDigest;
    if (row.position != expected)
        return QString("event %1 of the log is missing before this one").arg(expected);
    if (!linked)
        return "event does not continue the log of the station";
    return sameStation ? QString() : "event bears another station";
}

void LogWalk::reportLink(QByteArrayView subject, qint64 event, const QString &what)
{
    const QByteArray key = subject.toByteArray();
    if (m_broken.contains(key))
        return; // what follows a broken link says little
    m_broken.insert(key);
    m_report({QString::fromUtf8(subject), event, what});
}

Result<void> LogWalk::compareHeads()
{
    LOOPWRIGHT_ASSIGN(auto heads, RawStatement::of(m_connection, "event.heads"));
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, heads.next());
        if (!more)
            break;
        const QByteArray subject = heads.bytes(0).toByteArray();
        const auto chain = m_chains.find(subject);
        if (chain == m_chains.end()) {
            m_report({QString::fromUtf8(subject), 0, "all events of the chain are missing"});
            continue;
        }
        chain->ended = true;
        if (chain->sequence != heads.integer(1) || view(chain->digest) != heads.bytes(2))
            reportLink(subject, chain->sequence,
                       QString("the chain should end with event %1, and ends with this one "
                               "otherwise")
                           .arg(heads.integer(1)));
    }
    for (auto chain = m_chains.begin(); chain != m_chains.end(); ++chain)
        if (!chain->ended)
            reportLink(chain.key(), chain->sequence,
                       "nothing says that the chain should end with this event");
    return {};
}

} // namespace loopwright
