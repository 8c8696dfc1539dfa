#pragma once
// SQLite's result codes in the program's words. A database that cannot be opened, is locked,
// damaged, read-only or of a wrong kind is DatabaseTrouble; a disk that refuses a write is
// DiskTrouble; a broken constraint is BadInput, because a value came through that the rules of the
// tables refuse.

#include "core/base/Result.h"

struct sqlite3;

namespace loopwright {

/// The error for result `code`. `path` is the database, `doing` what was tried (a statement's
/// label).
Error sqliteError(int code, const QString &detail, const QString &path, const QString &doing);
/// The same with the words of the connection's last error.
Error sqliteError(sqlite3 *handle, const QString &path, const QString &doing);

} // namespace loopwright
