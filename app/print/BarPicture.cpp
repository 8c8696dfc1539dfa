#include "app/print/BarPicture.h"

#include "app/print/PictureFile.h"

#include <QFontMetricsF>

#include <algorithm>

namespace loopwright {

namespace {

constexpr double barStep = 1.7; ///< from bar to bar, in heights of a line

double headOf(double width, const BarPicture &picture, const PictureStyle &style)
{
    return pictureHeadHeight(width, picture.title, picture.sum, style) +
           QFontMetricsF(style.font).height() * 0.7;
}

double widest(const BarPicture &picture, QString Bar::*text, const QFontMetricsF &metrics)
{
    double width = 0;
    for (const Bar &bar : picture.bars)
        width = std::max(width, metrics.horizontalAdvance(bar.*text));
    return width;
}

} // namespace

void BarPicture::keep(std::size_t most)
{
    if (bars.size() <= most)
        return;
    const QString kept =
        QString(inTime ? "The newest %1 of %2 are drawn." : "The first %1 of %2 are drawn.")
            .arg(most)
            .arg(bars.size());
    sum = sum.isEmpty() ? kept : sum + ' ' + kept;
    if (inTime)
        bars.erase(bars.begin(), bars.end() - std::ptrdiff_t(most));
    bars.resize(most);
}

double barPictureHeight(double width, const BarPicture &picture, const PictureStyle &style)
{
    return headOf(width, picture, style) +
           QFontMetricsF(style.font).height() * barStep *
               double(std::max<std::size_t>(picture.bars.size(), 1));
}

void paintBars(QPainter &painter, const QRectF &rect, const BarPicture &picture,
               const PictureStyle &style)
{
    painter.save();
    paintPictureHead(painter, rect, picture.title, picture.sum, style);
    const QFontMetricsF metrics(style.font);
    const double line = metrics.height(), gap = line * 0.6;
    const double labels =
        std::min(widest(picture, &Bar::label, metrics) * 1.02, rect.width() * 0.4);
    const double texts = std::min(widest(picture, &Bar::text, metrics) * 1.02, rect.width() * 0.35);
    const double left = rect.left() + labels + gap;
    const double room = std::max(0.0, rect.right() - texts - gap - left);
    double y = rect.top() + headOf(rect.width(), picture, style);
    painter.setFont(style.font);
    if (picture.bars.empty()) {
        painter.setPen(style.muted);
        painter.drawText(QRectF(rect.left(), y, rect.width(), line), Qt::AlignLeft,
                         style.say("Nothing to draw."));
    }
    for (const Bar &bar : picture.bars) {
        painter.setPen(style.text);
        painter.drawText(QRectF(rect.left(), y, labels, line), Qt::AlignRight | Qt::AlignVCenter,
                         metrics.elidedText(bar.label, Qt::ElideMiddle, labels));
        const QRectF whole(left, y + line * 0.1, room, line * 0.8);
        painter.setPen(QPen(style.line, line * 0.05));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(whole);
        const double length = std::clamp(bar.length, 0.0, 1.0) * room;
        painter.fillRect(QRectF(whole.topLeft(), QSizeF(length, whole.height())), style.accent);
        painter.setPen(style.text);
        painter.drawText(QRectF(rect.right() - texts, y, texts, line),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(style.say(bar.text), Qt::ElideRight, texts));
        y += line * barStep;
    }
    painter.restore();
}

QByteArray barsSvg(const BarPicture &picture)
{
    constexpr double width = 760, margin = 14;
    const PictureStyle style = paperStyle(13);
    const double inner = width - 2 * margin;
    const QSizeF size(width, barPictureHeight(inner, picture, style) + 2 * margin);
    return pictureSvg(size, picture.title, [&](QPainter &painter, const QRectF &rect) {
        paintBars(painter, rect.adjusted(margin, margin, -margin, -margin), picture, style);
    });
}

} // namespace loopwright
