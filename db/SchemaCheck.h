#pragma once
// Whether tables, indexes, triggers and views are those that the migrations make: a trigger that
// was dropped, changed or put in, likewise an index or a table, is named. Nothing of the database
// is run for it.

#include "core/base/Result.h"

#include <QStringList>

namespace loopwright {

class SqliteConnection;

/// Each difference in one sentence, e.g. "the trigger fact_no_update is missing". A database of an
/// older form is held against its own form.
Result<QStringList> schemaFaults(SqliteConnection &connection);

} // namespace loopwright
