#pragma once
// Records, their copies and the folders made for them are for their owner's eyes only, whatever the
// umask.

#include <QString>

namespace loopwright {

/// Makes the folder, and those above it that are not there, with mode 0700; what is there stays as
/// it is. False if that cannot be done.
bool makePrivateFolder(const QString &path);

/// An empty file with mode 0600, so that whoever opens it by its name writes into that. False if
/// there is one, or it cannot be made.
bool makePrivateFile(const QString &path);

/// Takes from a file or folder that is there every right of others. True if they had any.
bool closeToOthers(const QString &path);

} // namespace loopwright
