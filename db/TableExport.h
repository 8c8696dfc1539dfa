#pragma once
// Every table of the records, row by row as texts, for the export.

#include "db/Database.h"

#include <QStringList>

#include <functional>

namespace loopwright {

/// Names of all tables, in the order of the house. `internal` says whether the unpublished numbers
/// are among them.
QStringList exportedTables(bool internal);

/// Gives first the names of the columns, then each row; an absent value is an empty text. The first
/// failure of `take` ends it.
Result<void> exportTable(const Database &database, const QString &table,
                         const std::function<Result<void>(const QStringList &)> &take);

/// Names of the tables that the database really has, search index left out; sorted.
Result<QStringList> tablesThere(const Database &database);

} // namespace loopwright
