#pragma once
// The statements of SqlCatalog in PostgreSQL's words: parameters by number instead of by name, and
// without the hints that only SQLite takes (which index, in which order tables are read; a
// CROSS JOIN with a condition is such a hint). What else differs stands in db/postgresql/queries,
// in the place of the label of the same name.

#include "db/SqlCatalog.h"

#include <string>
#include <string_view>
#include <vector>

namespace loopwright {

struct PostgresSql
{
    std::string text;
    std::vector<std::string> parameters; ///< without the colon; the first is $1
    bool changesRows = false;
};

PostgresSql toPostgres(std::string_view sql);

/// SqlCatalog::embedded() with what differs laid over it.
const SqlCatalog &postgresCatalog();

} // namespace loopwright
