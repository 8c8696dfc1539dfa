#pragma once
// Looks at pictures in tests: where is ink, and of which colour.

#include "app/print/PictureStyle.h"

#include <QColor>
#include <QImage>
#include <QPainter>

#include <functional>

namespace loopwright::pictures {

/// Draws on white, 1 unit to the pixel, without antialiasing, so that colours stay what they are.
inline QImage draw(const QSize &size, const std::function<void(QPainter &, const QRectF &)> &paint)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint(painter, QRectF(QPointF(), QSizeF(size)));
    return image;
}

inline qint64 count(const QImage &image, const QColor &colour, QRect area = {})
{
    area = area.isNull() ? image.rect() : area.intersected(image.rect());
    qint64 found = 0;
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x)
            found += QColor(image.pixel(x, y)) == colour;
    return found;
}

/// Pixels that are not white.
inline qint64 ink(const QImage &image, QRect area = {})
{
    area = area.isNull() ? image.rect() : area.intersected(image.rect());
    return qint64(area.width()) * area.height() - count(image, Qt::white, area);
}

/// The same picture as somebody sees it who sees no colours.
inline QImage grey(const QImage &image)
{
    return image.convertToFormat(QImage::Format_Grayscale8);
}

/// The style whose every colour is black: what can still be told apart is told by shape.
inline PictureStyle blackOnWhite(int size)
{
    PictureStyle style = paperStyle(size);
    for (QColor *colour : {&style.text, &style.muted, &style.line, &style.accent, &style.good,
                           &style.bad, &style.doubtful})
        *colour = Qt::black;
    return style;
}

} // namespace loopwright::pictures
