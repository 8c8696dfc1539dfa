#pragma once
// Keeping the records: backup, restore, and invented records for trials.

#include "app/actions/Records.h"

namespace loopwright {

/// Who restores, as on the command line: a key or nothing, and where his PIN comes from.
struct Restorer
{
    QString by;
    Records::PinSource pin = {};
};

/// Online; the copy is verified (integrity and history) before it is called done, and takes `path`
/// only when whole. Then the head of its log is written beside it, signed if the station has its
/// key at hand; DiskTrouble that says so if that alone fails.
Result<void> backupTo(Records &records, const QString &path, const Progress &progress = {});
/// The file with that head, for `history verify --head`.
QString headBesideBackup(const QString &backupPath);
/// Puts a backup in the place of the database at `databasePath`; the present one is kept beside it.
/// The backup is verified first. No Records may be open on it. Returns where the present one is
/// kept, empty if there was none. The restored records say that `by` did it, and have a station tag
/// of their own.
Result<QString> restoreFrom(const QString &backupPath, const QString &databasePath,
                            const Restorer &restorer, const Progress &progress = {});

/// Invented records of realistic shape (Invented.h) in an empty database, which nobody else may
/// have open. Refused if it is not empty. Broken off, it leaves nothing behind.
Result<void> fillWithInvented(Records &records, int circuits, quint64 seed,
                              const Progress &progress = {});

} // namespace loopwright
