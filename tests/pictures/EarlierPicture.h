#pragma once
// A picture beside the one of the same name that was made before.

#include <QImage>

namespace loopwright {

/// Writes the picture to the path. Where another was there, both stand side by side in
/// `NAME.changed.png`, with a frame round all that differs, and it is told how much of the picture
/// does, in percent; else nothing is told, and such a file of before is gone.
QString keepBesideEarlier(const QImage &picture, const QString &path);

} // namespace loopwright
