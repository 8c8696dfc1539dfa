#include "app/actions/Maintenance.h"

#include "app/actions/Acting.h"
#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "core/base/Json.h"
#include "db/Backup.h"
#include "db/EventStore.h"

#include <QFile>
#include <QFileInfo>

namespace loopwright {

namespace {

/// Of the copy, not of the records: these may have grown meanwhile.
Result<SignedHead> headOfBackup(Records &records, const QString &path)
{
    LOOPWRIGHT_ASSIGN(const auto copy, Database::open(path, Database::Access::ReadOnly));
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(copy).logHead());
    const auto signer = signerAtHand(records); // a key that cannot be used hinders no backup
    return signer && *signer ? signedHead(head, **signer) : SignedHead{head, {}, {}};
}

} // namespace

Result<void> backupTo(Records &records, const QString &path, const Progress &progress)
{
    LOOPWRIGHT_TRY(backUp(records.database(), path, progress));
    LOOPWRIGHT_ASSIGN(const auto head, headOfBackup(records, path));
    const auto written =
        writeOut(headBesideBackup(path), FileKind::Json, canonicalJson(head.toJson()) + '\n');
    if (!written)
        return failure(written.error().code,
                       "the backup is made, and the signed head of its log is not: " +
                           written.error().message,
                       written.error().place);
    return {};
}

QString headBesideBackup(const QString &backupPath)
{
    return backupPath + ".head";
}

namespace {

/// The records that are there say who may replace them; if they can no longer be read, the register
/// of the backup does.
Result<QString> whoRestores(const QString &backupPath, const QString &databasePath,
                            const Restorer &restorer)
{
    for (const QString &path : {databasePath, backupPath}) {
        if (!QFile::exists(path))
            continue;
        const auto access =
            path == databasePath ? Database::Access::ReadWrite : Database::Access::ReadOnly;
        const auto records = Records::open(path, access);
        if (!records)
            continue;
        LOOPWRIGHT_TRY(actFor(**records, restorer.by));
        (*records)->setPinSource(restorer.pin);
        LOOPWRIGHT_TRY(allow(**records, Act::Restore));
        return (*records)->by();
    }
    return restorer.by.isEmpty() ? Records::loginName() : restorer.by;
}

} // namespace

Result<QString> restoreFrom(const QString &backupPath, const QString &databasePath,
                            const Restorer &restorer, const Progress &progress)
{
    if (QFileInfo::exists(backupPath) && !QFileInfo(backupPath).isFile())
        return failure(ErrorCode::BadInput, "is no file", backupPath);
    LOOPWRIGHT_ASSIGN(const auto by, whoRestores(backupPath, databasePath, restorer));
    Event event;
    event.by = by;
    event.at = Records::realNow();
    return restore(backupPath, databasePath, event, progress);
}

} // namespace loopwright
