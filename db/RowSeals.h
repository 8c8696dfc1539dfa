#pragma once
// The seals of rows: whatever is written to a table under a transaction is noted, and the event
// that it is committed with keeps a digest of each row over all its columns as they are stored. So
// a row that was edited past this program is found, whichever of its columns it was. Drafts are no
// records, events seal themselves (StationLog.h), and what the board counts and its search index
// are held against its rows by the audit. Which papers are due is struck off without an event, and
// nothing in the records can tell it.

#include "core/base/Result.h"
#include "db/Sha256.h"

#include <QByteArray>

#include <map>
#include <set>
#include <string>
#include <string_view>

namespace loopwright {

class Connection;

/// Notes which rows of which sealed tables are written, from when it is made until it goes away.
class RowWatch
{
public:
    explicit RowWatch(Connection &connection);
    ~RowWatch();
    RowWatch(const RowWatch &) = delete;
    RowWatch &operator=(const RowWatch &) = delete;

    /// Some table that was written to since lines were taken; empty if none was.
    Result<QString> someTable();
    /// Notes every row that is there: for the first event of a database, which is made with some.
    Result<void> noteAll(const QByteArray &table);
    /// As if the row had been written.
    void note(std::string_view table, qint64 id);
    /// A line for each row that was written since it was last asked, as event.sealed holds it.
    Result<QByteArray> takeLines();

private:
    Result<QByteArray> lines();
    Connection &m_connection;
    Sha256 m_sha;
    std::map<std::string, std::set<qint64>, std::less<>> m_written;
};

bool isSealedTable(std::string_view table);
/// The column that numbers the rows of a sealed table.
std::string keyOf(std::string_view table);

/// What stands for the digest of a row that was removed.
constexpr char removedRow = '-';

} // namespace loopwright
