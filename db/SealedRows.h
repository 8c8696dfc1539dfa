#pragma once
// Holds the rows as they are stored against the seals of the log: what was edited, put in, or is
// gone is named with the event that sealed it last.

#include "db/RawStatement.h"
#include "db/Sha256.h"

#include <QHash>

#include <map>
#include <vector>

namespace loopwright {

class SealedRows
{
public:
    explicit SealedRows(Connection &connection)
        : m_connection(connection)
    {
    }

    /// What the event at `position` sealed (event.sealed). False if it cannot be read.
    bool take(QByteArrayView lines, qint64 position);

    struct Fault
    {
        QByteArray table;
        qint64 id = 0;
        qint64 position = 0; ///< in the log, of the event that sealed it last; 0 if none did
        enum What
        {
            Changed,
            Unsealed,
            Gone
        } what = Changed;
    };
    /// Rows of a table, after all events were taken; no more than `most`.
    Result<std::vector<Fault>> compare(const QByteArray &table, std::size_t most);

private:
    struct Seal
    {
        Sha256::Digest digest{};
        qint64 position = 0;
        bool removed = false;
        bool seen = false;
    };
    /// Ids are given from 1 on without gaps, so they lie in a row; one that is far away, which only
    /// an edit can be, has a place of its own.
    struct Seals
    {
        std::vector<Seal> near;
        std::map<qint64, Seal> far;

        Seal &of(qint64 id);
        Seal *find(qint64 id);
    };

    Seals &sealsOf(QByteArrayView table);
    bool takeLine(QByteArrayView line, qint64 position);
    void addGone(const QByteArray &table, Seals &seals, std::vector<Fault> &faults) const;

    Connection &m_connection;
    std::vector<std::pair<QByteArray, Seals>> m_tables;
    Sha256 m_sha;
};

} // namespace loopwright
