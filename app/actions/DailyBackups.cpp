#include "app/actions/DailyBackups.h"

#include "app/actions/Maintenance.h"
#include "db/Backup.h"
#include "db/PrivateFiles.h"

#include <QDir>
#include <QFileInfo>
#include <QMap>
#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int days = 7, weeks = 4, months = 12;

QString fileOf(const QString &databasePath, QDate day)
{
    return QDir(dailyBackupFolder(databasePath)).filePath(day.toString("yyyy-MM-dd") + ".sqlite");
}

/// Day and file of each backup that is there.
QMap<QDate, QString> backupsOf(const QString &databasePath)
{
    static const QRegularExpression shape(R"(\A(\d{4}-\d\d-\d\d)\.sqlite\z)");
    const QDir folder(dailyBackupFolder(databasePath));
    QMap<QDate, QString> found;
    for (const QString &name : folder.entryList(QDir::Files)) {
        const QDate day = QDate::fromString(shape.match(name).captured(1), Qt::ISODate);
        if (day.isValid() && isBackup(folder.filePath(name)))
            found.insert(day, folder.filePath(name));
    }
    return found;
}

/// The first day of each of the newest `most` periods that `period` tells apart.
void keepFirstOf(const QList<QDate> &newestFirst, int most, QDate (*period)(QDate),
                 QList<QDate> &kept)
{
    QMap<QDate, QDate> first; // of each period
    for (const QDate day : newestFirst)
        first[period(day)] = day; // the oldest is met last
    const QList<QDate> all = first.values();
    kept += all.mid(std::max<qsizetype>(0, all.size() - most));
}

} // namespace

QString dailyBackupFolder(const QString &databasePath)
{
    const QFileInfo file(databasePath);
    return file.absoluteDir().filePath(file.completeBaseName() + "-backups");
}

QList<QDate> keptBackups(QList<QDate> all)
{
    std::sort(all.begin(), all.end(), std::greater<>());
    QList<QDate> kept = all.first(std::min<qsizetype>(days, all.size()));
    const QList<QDate> older = all.mid(kept.size());
    keepFirstOf(
        older, weeks, [](QDate day) { return day.addDays(1 - day.dayOfWeek()); }, kept);
    keepFirstOf(
        older, months, [](QDate day) { return QDate(day.year(), day.month(), 1); }, kept);
    std::sort(kept.begin(), kept.end());
    kept.erase(std::unique(kept.begin(), kept.end()), kept.end());
    return kept;
}

Result<bool> backUpDaily(Records &records, QDate today, const Progress &progress)
{
    if (!records.database().isFile()) // its keeper backs it up (DEVELOPERS.md)
        return false;
    const QString path = records.database().path();
    const QString folder = dailyBackupFolder(path), file = fileOf(path, today);
    if (isBackup(file))
        return false;
    [[maybe_unused]] const auto counted = records.database().keepStatistics(); // at most once a day
    if (!makePrivateFolder(folder))
        return failure(ErrorCode::DiskTrouble, "the folder cannot be made", folder);
    closeToOthers(folder);
    LOOPWRIGHT_TRY(backupTo(records, file, progress));
    const QMap<QDate, QString> there = backupsOf(path);
    const QList<QDate> kept = keptBackups(there.keys());
    for (auto it = there.begin(); it != there.end(); ++it)
        if (!kept.contains(it.key()))
            for (const QString &file : {*it, headBesideBackup(*it)})
                QFile::remove(file);
    return true;
}

std::optional<QString> newestDailyBackup(const QString &databasePath)
{
    const QMap<QDate, QString> there = backupsOf(databasePath);
    return there.isEmpty() ? std::nullopt : std::optional(there.last());
}

} // namespace loopwright
