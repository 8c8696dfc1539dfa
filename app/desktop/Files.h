#pragma once
// Files that a person drops.

#include <QStringList>

class QMimeData;

namespace loopwright {

/// The one local file of a drop; empty where there is none, or more than one, or where it is a
/// bundle, which belongs to the window.
QString droppedFile(const QMimeData *data);
/// The files of a drop of bundles alone; else none.
QStringList droppedBundles(const QMimeData *data);

} // namespace loopwright
