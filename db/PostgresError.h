#pragma once
// PostgreSQL's SQLSTATEs (PostgreSQL 15, appendix A) in the program's words, as SqliteError.h has
// them for files.

#include "core/base/Result.h"

#include <QByteArray>

namespace loopwright {

/// `state` is the SQLSTATE, empty where the connection failed; `detail` the server's words.
Error postgresError(const QByteArray &state, const QString &detail, const QString &path,
                    const QString &doing);

} // namespace loopwright
