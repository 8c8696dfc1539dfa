#pragma once
// A picture as the bytes of a PNG or SVG file.

#include <QByteArray>
#include <QPainter>
#include <QSizeF>

#include <functional>

namespace loopwright {

using PaintPicture = std::function<void(QPainter &, const QRectF &)>;

/// `scale` pixels for each unit of `size`; white ground.
QByteArray picturePng(const QSizeF &size, double scale, const PaintPicture &paint);
QByteArray pictureSvg(const QSizeF &size, const QString &title, const PaintPicture &paint);

} // namespace loopwright
