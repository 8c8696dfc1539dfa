#pragma once
// The form of records that a server keeps. Its number stands in a comment of the table `meta`, for
// everybody may read that and only the owner of the tables may change it.

#include "db/Migrator.h"
#include "db/PostgresConnection.h"

namespace loopwright {

/// What is there: nothing, this program's records, or DatabaseTrouble for another's tables. Makes
/// the tables where there are none; who is not the owner of the database may not.
Result<Migrator::Outcome> bringServerUpToDate(PostgresConnection &connection, bool mayWrite,
                                              const Migrator &migrator);

/// What stands in "postgresql/schema-NNNN.txt" for what the server says of a thing.
QByteArray schemaDigest(QByteArrayView told);

} // namespace loopwright
