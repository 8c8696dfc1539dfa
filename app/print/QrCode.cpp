#include "app/print/QrCode.h"

#include <QTransform>
#include <qrencode.h>

#include <memory>

namespace loopwright {

QPainterPath QrCode::in(const QRectF &square) const
{
    const double side = std::min(square.width(), square.height()) / modules;
    return QTransform::fromTranslate(square.x(), square.y()).scale(side, side).map(dark);
}

Result<QrCode> qrCode(const QString &text)
{
    const QByteArray bytes = text.toUtf8();
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeData(int(bytes.size()), reinterpret_cast<const uchar *>(bytes.constData()), 0,
                          QR_ECLEVEL_M),
        &QRcode_free);
    if (!code)
        return failure(ErrorCode::BadInput,
                       QString("a text of %1 bytes does not fit into a QR code").arg(bytes.size()));
    QrCode result;
    result.modules = code->width + 2 * quietZoneModules;
    // Runs of dark modules are merged, so that no hairline shows between neighbours.
    for (int y = 0; y < code->width; ++y) {
        for (int x = 0; x < code->width; ++x) {
            const int from = x;
            while (x < code->width && (code->data[y * code->width + x] & 1))
                ++x;
            if (x > from)
                result.dark.addRect(quietZoneModules + from, quietZoneModules + y, x - from, 1);
        }
    }
    return result;
}

} // namespace loopwright
