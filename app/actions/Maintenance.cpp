#include "app/actions/Maintenance.h"

#include "core/base/Csv.h"
#include "core/certificate/NumberGuard.h"
#include "db/Backup.h"
#include "db/OfficeStore.h"
#include "db/TableExport.h"

#include <QDir>
#include <QSaveFile>

namespace loopwright {

Result<void> backupTo(Records &records, const QString &path, const Progress &progress)
{
    return backUp(records.database(), path, progress);
}

Result<QString> restoreFrom(const QString &backupPath, const QString &databasePath,
                            const QString &by, const Progress &progress)
{
    Event event;
    event.by = by;
    event.at = Records::realNow();
    return restore(backupPath, databasePath, event, progress);
}

namespace {

Error diskError(const QSaveFile &file)
{
    return {ErrorCode::DiskTrouble, "cannot be written: " + file.errorString(), file.fileName()};
}

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
                       const QString &path)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return failure(diskError(file));
    LOOPWRIGHT_TRY(
        exportTable(records.database(), table, [&](const QStringList &row) -> Result<void> {
            QStringList safe;
            for (const QString &field : row)
                safe << spreadsheetSafe(guard.coverStored(field));
            const QByteArray record = csvRecord(safe);
            if (file.write(record) != record.size())
                return failure(diskError(file));
            return {};
        }));
    if (!file.flush() || !file.commit()) // commit() alone forgets what the disk said
        return failure(diskError(file));
    return {};
}

} // namespace

Result<QStringList> exportTables(Records &records, const QString &directory, bool internal,
                                 const Progress &progress)
{
    if (!QDir().mkpath(directory))
        return failure(ErrorCode::DiskTrouble, "the folder cannot be made", directory);
    LOOPWRIGHT_ASSIGN(const auto guard,
                      internal ? Result<NumberGuard>(NumberGuard()) : guardOfAllOffices(records));
    QStringList written;
    const QStringList tables = exportedTables(internal);
    for (const QString &table : tables) {
        if (progress && !progress(written.size(), tables.size()))
            return failure(ErrorCode::Refused,
                           "The export was stopped; the files written so far are whole.");
        const QString path = QDir(directory).filePath(table + ".csv");
        LOOPWRIGHT_TRY(exportOne(records, guard, table, path));
        written << path;
    }
    return written;
}

} // namespace loopwright
