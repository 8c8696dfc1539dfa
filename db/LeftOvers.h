#pragma once
// A file is made beside its place and put there when it is whole. What a killed process left of it
// is removed by the next one that makes the same file.

#include <QString>
#include <QStringList>

namespace loopwright {

/// `stem` with this process and a number: a name that no other file has.
QString nameInTheMaking(const QString &stem);
/// The files and folders of this stem whose processes run no more.
QStringList leftOvers(const QString &stem);
/// Removes them.
void removeLeftOvers(const QString &stem);

} // namespace loopwright
