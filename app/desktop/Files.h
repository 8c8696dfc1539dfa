#pragma once
// Files that a person drops.

#include <QString>

class QMimeData;

namespace loopwright {

/// The one local file of a drop; empty where there is none, or more than one.
QString droppedFile(const QMimeData *data);

} // namespace loopwright
