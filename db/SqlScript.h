#pragma once
// Cuts an SQL script into its statements. SQLite itself says where a statement is complete, so that
// semicolons in strings, comments and trigger bodies do no harm.

#include "core/base/Result.h"

#include <QByteArray>

#include <vector>

namespace loopwright {

struct SqlPiece
{
    QByteArray sql; ///< with its comments
    int line = 0;   ///< line of the script on which it starts
};

/// BadInput naming the line if the last statement is not complete. Comments after the last
/// statement are no statement.
Result<std::vector<SqlPiece>> splitSqlScript(const QByteArray &script, const QString &name);

} // namespace loopwright
