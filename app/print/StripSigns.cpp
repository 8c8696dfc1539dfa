#include "app/print/StripSigns.h"

namespace loopwright {

void paintTriangle(QPainter &painter, const PictureStyle &style, double em, double x, double y)
{
    const double r = em * 0.3;
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.bad);
    painter.drawPolygon(
        QPolygonF{QPointF(x - r, y - r * 1.7), QPointF(x + r, y - r * 1.7), QPointF(x, y)});
}

void paintCross(QPainter &painter, const PictureStyle &style, double em, double x, double y)
{
    const double r = em * 0.2;
    painter.setPen(QPen(style.bad, em * 0.1));
    painter.drawLine(QPointF(x - r, y - r), QPointF(x + r, y + r));
    painter.drawLine(QPointF(x - r, y + r), QPointF(x + r, y - r));
}

void paintMast(QPainter &painter, const PictureStyle &style, double em, double x, double top,
               double bottom, double size)
{
    painter.setPen(QPen(style.text, em * 0.12, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.text);
    painter.drawPolygon(
        QPolygonF{QPointF(x, top), QPointF(x + size, top + size * 0.5), QPointF(x, top + size)});
}

QPen gapPen(const PictureStyle &style, double em)
{
    QPen pen(style.muted, em * 0.09);
    pen.setDashPattern({1, 2});
    return pen;
}

} // namespace loopwright
