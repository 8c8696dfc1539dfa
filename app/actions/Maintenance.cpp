#include "app/actions/Maintenance.h"

#include "app/actions/Acting.h"
#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "core/base/Csv.h"
#include "core/base/Json.h"
#include "core/certificate/NumberGuard.h"
#include "db/Backup.h"
#include "db/EventStore.h"
#include "db/OfficeStore.h"
#include "db/TableExport.h"

#include <QDir>
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

namespace {

/// Knows the test lines of every office: calls to them stand in facts, and in all that is made of
/// facts and remarks.
Result<NumberGuard> guardOfAllOffices(Records &records)
{
    const OfficeStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto offices, store.all());
    QList<TestLine> lines;
    for (const ServingOffice &office : offices) {
        LOOPWRIGHT_ASSIGN(const auto some, store.testLines(office.key));
        lines += some;
    }
    return NumberGuard(lines);
}

Result<void> exportOne(Records &records, const NumberGuard &guard, const QString &table,
                       const QString &path, bool internal)
{
    LOOPWRIGHT_ASSIGN(auto file, OutFile::open(path, FileKind::Csv, internal));
    LOOPWRIGHT_TRY(
        exportTable(records.database(), table, [&](const QStringList &row) -> Result<void> {
            QStringList safe;
            for (const QString &field : row)
                safe << spreadsheetSafe(guard.coverStored(field));
            return file.write(csvRecord(safe));
        }));
    return file.commit();
}

} // namespace

Result<QStringList> exportTables(Records &records, const QString &directory, bool internal,
                                 const Progress &progress)
{
    if (internal)
        LOOPWRIGHT_TRY(allow(records, Act::ExportInternal));
    LOOPWRIGHT_TRY(makeFolder(directory));
    LOOPWRIGHT_ASSIGN(const auto guard,
                      internal ? Result<NumberGuard>(NumberGuard()) : guardOfAllOffices(records));
    QStringList written;
    const QStringList tables = exportedTables(internal);
    for (const QString &table : tables) {
        if (progress && !progress(written.size(), tables.size()))
            return failure(ErrorCode::Refused,
                           "The export was stopped; the files written so far are whole.");
        const QString path = QDir(directory).filePath(table + ".csv");
        LOOPWRIGHT_TRY(exportOne(records, guard, table, path, internal));
        written << path;
    }
    return written;
}

} // namespace loopwright
