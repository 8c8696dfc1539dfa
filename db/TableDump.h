#pragma once
// Every table as it is, for an export: the column names, then row by row as texts.

#include "db/Database.h"

#include <QStringList>

#include <functional>

namespace loopwright {

/// A table that holds numbers which are kept for installers and never go to a customer.
bool isUnpublished(const QString &table);

class TableDump
{
public:
    explicit TableDump(const Database &database)
        : m_database(database)
    {
    }

    /// By name; without the search index, which is made of the others.
    Result<QStringList> tables() const;
    /// Calls `row` with the column names and then with each row; NULL is an empty text. The first
    /// failure of `row` ends it. NotFound for a table that tables() does not name.
    Result<void> dump(const QString &table,
                      const std::function<Result<void>(const QStringList &)> &row) const;
    /// Whether no office, order or circuit was ever recorded.
    Result<bool> isEmpty() const;

private:
    const Database &m_database;
};

} // namespace loopwright
