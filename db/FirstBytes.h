#pragma once
// Looks at the start of a file that may be a database, through SQLite's own door. A file that is
// opened and closed past SQLite loses every lock that this program holds on it (POSIX advisory
// locks, fcntl): another program would then take the write-ahead log away from under an open
// window, and what the window writes next would be lost.

#include "core/base/Result.h"

#include <QByteArray>

namespace loopwright {

/// Up to `count` bytes from the start of the file; fewer if it is shorter. DatabaseTrouble if
/// it cannot be opened or read.
Result<QByteArray> firstBytes(const QString &path, int count);

} // namespace loopwright
