#pragma once
// What a database is made of, held against what the migrations make.

#include "db/Connection.h"

#include <QMap>

namespace loopwright {

/// By "trigger fact_no_update": what the engine says of it.
using Schema = QMap<QByteArray, QByteArray>;

/// The statement schema.all of the engine.
Result<Schema> readSchema(Connection &connection);

/// Each difference in one sentence, e.g. "the trigger fact_no_update is missing".
QStringList schemaDifferences(const Schema &wanted, const Schema &there);

} // namespace loopwright
