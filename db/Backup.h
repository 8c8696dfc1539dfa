#pragma once
// Backup while the records are in use, and restore. Neither takes its place before the copy was
// read through (integrity and history); on a failure what stood there before is untouched.

#include "core/history/Event.h"
#include "db/Database.h"
#include "db/SqliteCopy.h"

namespace loopwright {

/// Copies the records as they are at this moment to `path` (one file), which bears the mark of a
/// backup. DatabaseTrouble if the records themselves are damaged or their history is broken: the
/// first fault is named, and an earlier backup of this name stays. Usage if another file than a
/// backup stands there; DiskTrouble if the disk refuses it; Refused if the progress said stop.
Result<void> backUp(const Database &database, const QString &path,
                    const CopyProgress &progress = {});

/// Whether a file is there that bears the mark of a backup.
bool isBackup(const QString &path);

/// Puts a backup in the place of the database at `databasePath`, and returns where the present one
/// is kept: `databasePath`.before-restore, with a number appended if that is taken; empty if
/// there was none. A backup of an older form is brought up to date on the way. The restored records
/// are a station of their own, with a new tag; `event` (by and at) is recorded in them
/// and says so. DatabaseTrouble if the backup is not whole, or has tables, indexes or triggers that
/// are not ours, or the present database is open in any program; a damaged present database is no
/// hindrance.
Result<QString> restore(const QString &backupPath, const QString &databasePath, const Event &event,
                        const CopyProgress &progress = {});

} // namespace loopwright
