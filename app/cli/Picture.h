#pragma once
// Writes a picture in the form that the name of the file asks for.

#include "core/base/Result.h"

#include <QByteArray>
#include <QStringList>

#include <functional>

namespace loopwright {

struct PictureMakers
{
    std::function<QByteArray()> png;
    std::function<QByteArray()> svg;
};

/// What --format takes.
QStringList pictureFormats();
/// F.png or F.svg, or whatever name and its format; else wrong usage.
Result<void> writePicture(const QString &path, const QString &format, const PictureMakers &makers);

} // namespace loopwright
