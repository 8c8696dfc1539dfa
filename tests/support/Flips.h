#pragma once
// Flips single bits of a database file, and asks verify and audit about each. What neither finds
// must be a place that says nothing: then every row of every table, the schema and the marks of the
// file read as before. Such places are
//   - the space of a page between its cell pointers and its cells, freed cells and free pages: of
//     these SQLite reads sizes and links, which integrity_check follows, and nothing else;
//   - of the file's header: the counters that change with each write (bytes 24 to 27 and 92 to 95,
//     with them the size in pages, 28 to 31, which SQLite then counts anew; and 40 to 43, of the
//     schema), of two numbers of four bytes the upper ones, for SQLite reads the last one alone
//     (the schema's form, 44 to 46, and the encoding, 56 to 59, of that two bits), the suggested
//     cache (48 to 51), whether free pages are given back (64 to 67, which counts only beside 52 to
//     55), room for later (72 to 91), the version of SQLite that wrote last (96 to 99), and how it
//     keeps its journal (18 and 19).
// In the pages of the search index SQLite's own check misses one kind: it sums its entries by
// exclusive or, so that a changed letter of a piece of text that one row holds twice adds nothing.
// What is searched stands in the rows, which are compared; such a flip costs a hit of a search, and
// building the index anew mends it.
// A draft is no record: what is being typed may be changed by anybody, and is not sealed.

#include "app/actions/Audit.h"
#include "app/actions/History.h"
#include "tests/support/Tamper.h"

#include <QCryptographicHash>
#include <QFile>

#include <algorithm>

namespace loopwright::flips {

inline QByteArray fileOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline bool isIn(qint64 offset, std::initializer_list<std::pair<int, int>> ranges)
{
    return std::any_of(ranges.begin(), ranges.end(), [offset](const auto &range) {
        return offset >= range.first && offset <= range.second;
    });
}

inline bool saysNothingInTheHeader(qint64 offset)
{
    return isIn(offset, {{18, 19}, {24, 31}, {40, 46}, {48, 51}, {56, 59}, {64, 67}, {72, 99}});
}

/// All that the file says, drafts apart, as a foreign program reads it. Empty if it cannot be read.
inline QByteArray contentOf(const QString &path)
{
    sqlite3 *handle = nullptr;
    QCryptographicHash hash(QCryptographicHash::Sha256);
    bool whole = sqlite3_open(QFile::encodeName(path).constData(), &handle) == SQLITE_OK;
    const auto read = [&](const QByteArray &sql) {
        sqlite3_stmt *statement = nullptr;
        QList<QByteArray> first;
        whole = whole &&
                sqlite3_prepare_v2(handle, sql.constData(), -1, &statement, nullptr) == SQLITE_OK;
        int code = whole ? sqlite3_step(statement) : SQLITE_DONE;
        for (; code == SQLITE_ROW; code = sqlite3_step(statement)) {
            for (int i = 0; i < sqlite3_column_count(statement); ++i) {
                const QByteArray value(static_cast<const char *>(sqlite3_column_blob(statement, i)),
                                       sqlite3_column_bytes(statement, i));
                hash.addData(QByteArray::number(sqlite3_column_type(statement, i)));
                hash.addData(QByteArray::number(value.size()));
                hash.addData(QByteArray(':' + value));
                if (i == 0)
                    first << value;
            }
        }
        whole = whole && code == SQLITE_DONE;
        sqlite3_finalize(statement);
        return first;
    };
    read("PRAGMA user_version");
    read("PRAGMA application_id");
    read("PRAGMA encoding");
    read("SELECT type, name, tbl_name, sql FROM sqlite_schema");
    // What SQLite counts for itself says nothing.
    for (const QByteArray &table :
         read("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT IN ('draft',"
              " 'order_search', 'order_search_data') AND name NOT GLOB 'sqlite_stat*' ORDER BY "
              "name"))
        read("SELECT * FROM \"" + table + "\" NOT INDEXED");
    sqlite3_close(handle);
    return whole ? hash.result() : QByteArray();
}

enum class Flip
{
    Found,
    SaysNothing,
    Missed
};

class Flipper
{
public:
    /// Works with a copy of the database at `path`, which has no journal beside it.
    Flipper(const QString &path, const QString &copy)
        : m_bytes(fileOf(path))
        , m_copy(copy)
        , m_content(contentOf(path))
    {
    }

    qint64 size() const { return m_bytes.size(); }

    /// One bit of the byte, another one for each offset.
    Flip flip(qint64 offset)
    {
        m_bytes[offset] = char(m_bytes[offset] ^ (1 << offset % 8));
        write();
        const bool found = isFound();
        write(); // opening may have changed the file
        m_bytes[offset] = char(m_bytes[offset] ^ (1 << offset % 8));
        if (found)
            return Flip::Found;
        const bool known = offset >= 100 || saysNothingInTheHeader(offset);
        return known && contentOf(m_copy) == m_content ? Flip::SaysNothing : Flip::Missed;
    }

private:
    void write() const
    {
        for (const char *ending : {"", "-wal", "-shm", "-journal"})
            QFile::remove(m_copy + ending);
        QFile file(m_copy);
        if (!file.open(QIODevice::WriteOnly) || file.write(m_bytes) != m_bytes.size())
            qFatal("%s cannot be written", qPrintable(m_copy));
    }
    bool isFound() const
    {
        const auto records = Records::open(m_copy);
        if (!records)
            return true;
        const auto verified = verifyHistory(**records);
        if (!verified || !verified->broken.empty())
            return true;
        const auto audited = auditDerived(**records);
        return !audited || !audited->empty();
    }

    QByteArray m_bytes;
    QString m_copy;
    QByteArray m_content;
};

} // namespace loopwright::flips
