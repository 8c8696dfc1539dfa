#include "app/print/PictureFile.h"

#include <QBuffer>
#include <QImage>
#include <QSvgGenerator>

namespace loopwright {

QByteArray picturePng(const QSizeF &size, double scale, const PaintPicture &paint)
{
    QImage image((size * scale).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(scale, scale);
    paint(painter, QRectF(QPointF(), size));
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QByteArray pictureSvg(const QSizeF &size, const QString &title, const PaintPicture &paint)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF(QPointF(), size));
    generator.setResolution(96);
    generator.setTitle(title);
    QPainter painter(&generator);
    painter.fillRect(QRectF(QPointF(), size), Qt::white);
    paint(painter, QRectF(QPointF(), size));
    painter.end();
    return bytes;
}

} // namespace loopwright
