#include "db/SqliteError.h"

#include <sqlite3.h>

namespace loopwright {

namespace {

struct Meaning
{
    int code; ///< extended or primary result code; the first row that fits is taken
    ErrorCode kind;
    const char *message;
};

constexpr Meaning meanings[] = {
    {SQLITE_IOERR_READ, ErrorCode::DatabaseTrouble, "the database cannot be read from the disk"},
    {SQLITE_IOERR_SHORT_READ, ErrorCode::DatabaseTrouble, "the database is cut short"},
    {SQLITE_IOERR_CORRUPTFS, ErrorCode::DatabaseTrouble,
     "the disk holding the database is damaged"},
    {SQLITE_IOERR, ErrorCode::DiskTrouble, "the disk refused to write; nothing was changed"},
    {SQLITE_FULL, ErrorCode::DiskTrouble, "the disk is full; nothing was changed"},
    {SQLITE_BUSY, ErrorCode::Busy,
     "the database is locked by another program; nothing was changed"},
    {SQLITE_LOCKED, ErrorCode::Busy,
     "the database is locked by another program; nothing was changed"},
    {SQLITE_READONLY_DIRECTORY, ErrorCode::DatabaseTrouble,
     "the folder of the database cannot be written"},
    {SQLITE_READONLY, ErrorCode::DatabaseTrouble,
     "the database cannot be written: it is read-only"},
    {SQLITE_NOTADB, ErrorCode::DatabaseTrouble, "is not a database"},
    {SQLITE_CORRUPT, ErrorCode::DatabaseTrouble,
     "the database is damaged; restore it from a backup"},
    {SQLITE_CANTOPEN, ErrorCode::DatabaseTrouble, "the database cannot be opened"},
    {SQLITE_PERM, ErrorCode::DatabaseTrouble, "the database may not be opened"},
    {SQLITE_INTERRUPT, ErrorCode::Refused, "was cancelled"},
    {SQLITE_CONSTRAINT, ErrorCode::BadInput, "the records refuse this value"},
    {SQLITE_TOOBIG, ErrorCode::BadInput, "a value is too long for the records"},
};

} // namespace

Error sqliteError(int code, const QString &detail, const QString &path, const QString &doing)
{
    for (const Meaning &meaning : meanings) {
        if (meaning.code != code && meaning.code != (code & 0xff))
            continue;
        QString message = QString::fromLatin1(meaning.message);
        if (meaning.kind == ErrorCode::BadInput)
            message += QString(" (%1: %2)").arg(doing, detail);
        return {meaning.kind, message, path};
    }
    return {ErrorCode::DatabaseTrouble, QString("the database failed: %1 (%2)").arg(detail, doing),
            path};
}

Error sqliteError(sqlite3 *handle, const QString &path, const QString &doing)
{
    return sqliteError(sqlite3_extended_errcode(handle), QString::fromUtf8(sqlite3_errmsg(handle)),
                       path, doing);
}

} // namespace loopwright
