#pragma once
// A backup of each day on which the program is open, in generations: one of each of the last seven
// days, then the first of each of four more weeks, then the first of each of twelve more months.
// They lie beside the records; against the loss of the disk a copy belongs elsewhere.

#include "app/actions/Records.h"

#include <QDate>
#include <QStringList>

namespace loopwright {

/// `records-backups` beside `records.sqlite`.
QString dailyBackupFolder(const QString &databasePath);

/// Makes that of `today` unless it is there, verified; then removes what the rule does not keep.
/// Nothing is removed if it could not be made. True if one was made. Only files that are named like
/// these and bear the mark of a backup are removed. As backupTo() it fails where the records
/// themselves are damaged: the earlier backups stay.
Result<bool> backUpDaily(Records &records, QDate today, const Progress &progress = {});

/// Of days on which there is a backup, those that are kept.
QList<QDate> keptBackups(QList<QDate> days);

/// The newest; nothing if there is none.
std::optional<QString> newestDailyBackup(const QString &databasePath);

} // namespace loopwright
