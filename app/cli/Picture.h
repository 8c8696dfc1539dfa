#pragma once
// Writes a picture in the form that the name of the file asks for.

#include "core/base/Result.h"

#include <QByteArray>

#include <functional>

namespace loopwright {

struct PictureMakers
{
    std::function<QByteArray()> png;
    std::function<QByteArray()> svg;
};

/// F.png or F.svg; any other name is wrong usage.
Result<void> writePicture(const QString &path, const PictureMakers &makers);

} // namespace loopwright
