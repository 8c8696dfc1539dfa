#include "app/print/PictureStyle.h"

#include "app/print/Fonts.h"
#include "app/print/PaperLanguage.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace loopwright {

PictureStyle paperStyle(int size)
{
    return {QColor(0xff, 0xff, 0xff),    QColor(0x1b, 0x21, 0x27),
            QColor(0x5a, 0x65, 0x6f),    QColor(0xc6, 0xcd, 0xd3),
            QColor(0x12, 0x54, 0x5c),    QColor(0x12, 0x54, 0x5c),
            QColor(0x9a, 0x24, 0x24),    QColor(0x8a, 0x5a, 0x00),
            printFont(Face::Text, size), [](const QString &text) { return onPaper(text); }};
}

void hatch(QPainter &painter, const QRectF &area, const PictureStyle &style, double em)
{
    painter.setPen(QPen(style.muted, em * 0.06));
    const double step = em * 0.45;
    for (double x = area.left() - area.height() + step; x < area.right(); x += step) {
        const double from = std::max(x, area.left());
        const double to = std::min(x + area.height(), area.right());
        painter.drawLine(QPointF(from, area.bottom() - (from - x)),
                         QPointF(to, area.bottom() - (to - x)));
    }
}

double pictureHeadHeight(double width, const QString &title, const QString &verdict,
                         const PictureStyle &style)
{
    const QFontMetricsF metrics(style.font);
    const double lines =
        std::ceil(metrics.horizontalAdvance(verdict) * 1.05 / std::max(1.0, width));
    return metrics.height() * ((title.isEmpty() ? 0 : 1.35) + 1.2 * std::min(2.0, lines));
}

void paintPictureHead(QPainter &painter, const QRectF &rect, const QString &title,
                      const QString &verdict, const PictureStyle &style)
{
    const QFontMetricsF metrics(style.font);
    QFont strong = style.font;
    strong.setWeight(QFont::Bold);
    painter.setPen(style.text);
    painter.setFont(strong);
    painter.drawText(rect.topLeft() + QPointF(0, metrics.ascent()), title);
    painter.setFont(style.font);
    const double y = rect.top() + (title.isEmpty() ? 0 : metrics.height() * 1.35);
    painter.drawText(QRectF(rect.left(), y, rect.width(), metrics.height() * 2.4), Qt::TextWordWrap,
                     verdict);
}

} // namespace loopwright
