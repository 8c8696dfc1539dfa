#pragma once
// Files that a person drops, or names when the program starts.

#include <QByteArrayView>
#include <QStringList>

class QMimeData;

namespace loopwright {

/// So many first octets tell a bundle.
inline constexpr qsizetype bundleMarkSize = 10;
bool beginsBundle(QByteArrayView head);
/// The one local file of a drop; empty where there is none, or more than one, or where it is a
/// bundle, which belongs to the window.
QString droppedFile(const QMimeData *data);
/// The files of a drop of bundles alone; else none.
QStringList droppedBundles(const QMimeData *data);

} // namespace loopwright
