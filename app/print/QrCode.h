#pragma once
// A QR code as a path, so that it is sharp at any size; the symbols are libqrencode's.

#include "core/base/Result.h"

#include <QPainterPath>
#include <QRectF>

namespace loopwright {

inline constexpr int quietZoneModules = 4; ///< on each side (ISO/IEC 18004)

struct QrCode
{
    QPainterPath dark; ///< dark modules in module units, quiet zone included
    int modules = 0;   ///< side with the quiet zone of four modules on each side

    /// The dark modules inside `square`; paint them without antialiasing on a light ground.
    QPainterPath in(const QRectF &square) const;
};

/// Error correction level M. BadInput if the text is longer than a code can hold.
Result<QrCode> qrCode(const QString &text);

} // namespace loopwright
