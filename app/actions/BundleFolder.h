#pragma once
// The bundles that lie in a folder and are not taken in here yet: what a window that watches it
// offers. Reads only.

#include "app/actions/VanDesk.h"

#include <QHash>

#include <optional>

namespace loopwright {

struct FolderFile
{
    qint64 size = 0, changedMs = 0;
    bool isRead = false;
    std::optional<BundleOutline> bundle = {}; ///< none of a file that holds none
};

struct FolderLook
{
    QHash<QString, FolderFile> files; ///< by path
    QStringList waiting; ///< paths of the bundles that are for these records, and not here yet
};

/// A file is read once it has lain there for two looks without a change, since somebody may still
/// be writing it, and not again until it changes; `before` is what the last look found. A van is
/// offered what an office made for it, an office what vans bring back. BadInput if the folder
/// cannot be read.
Result<FolderLook> lookInto(Records &records, const QString &folder,
                            const QHash<QString, FolderFile> &before);

} // namespace loopwright
