#pragma once
// Files that a person chooses, read whole.

#include "core/base/Result.h"

#include <QByteArray>

class QMimeData;

namespace loopwright {

/// BadInput where it cannot be read, or is longer than 2 GiB.
Result<QByteArray> readWholeFile(const QString &path);
/// The one local file of a drop; empty where there is none, or more than one.
QString droppedFile(const QMimeData *data);

} // namespace loopwright
