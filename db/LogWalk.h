#pragma once
// Walks over all events in the order of the log, and computes the chain of each subject and the log
// anew over the stored bytes.

#include "db/HistoryFault.h"
#include "db/RawStatement.h"
#include "db/SealedRows.h"
#include "db/Sha256.h"

#include <QHash>
#include <QSet>

namespace loopwright {

class LogWalk
{
public:
    /// What the events seal is told to `rows`, what is wrong to `report`.
    LogWalk(Connection &connection, SealedRows &rows,
            std::function<void(const HistoryFault &)> report)
        : m_connection(connection)
        , m_rows(rows)
        , m_report(std::move(report))
    {
    }

    Result<void> run(const CheckProgress &progress);
    qint64 events() const { return m_events; }

private:
    struct Link
    {
        qint64 sequence = 0;
        Sha256::Hex digest{};
        bool ended = false; ///< its head was looked at
    };
    struct Row; ///< an event as it is stored

    void follow(const Row &row);
    /// What is wrong with the event in its chain, in the log; empty if nothing is.
    QString wrongInChain(const Row &row);
    QString wrongInLog(const Row &row);
    Result<void> compareHeads();
    void reportLink(QByteArrayView subject, qint64 event, const QString &what);

    Connection &m_connection;
    SealedRows &m_rows;
    std::function<void(const HistoryFault &)> m_report;
    Sha256 m_sha;
    QByteArray m_bytes;
    QHash<QByteArray, Link> m_chains;
    QSet<QByteArray> m_broken; ///< chains of which a broken link was named
    qint64 m_events = 0, m_position = 0;
    QByteArray m_station, m_logDigest;
};

} // namespace loopwright
