#include "app/print/JobLinePainter.h"

#include <QFontMetricsF>

#include <algorithm>

namespace loopwright {

namespace {

/// Centre of a station on the line.
double stationX(const QRectF &rect, std::size_t stations, std::size_t index)
{
    return rect.left() + rect.width() * (double(index) + 0.5) / double(stations);
}

/// The style's font, set smaller where the longest text would not fit into `width`.
QFont fittedFont(QFont font, const QStringList &texts, double width)
{
    double longest = 1;
    for (const QString &text : texts)
        longest = std::max(longest, QFontMetricsF(font).horizontalAdvance(text));
    if (longest > width)
        font.setPixelSize(std::max(1, int(font.pixelSize() * width / longest)));
    return font;
}

QColor markColour(StationMark mark, const PictureStyle &style)
{
    switch (mark) {
    case StationMark::Done:
        return style.good;
    case StationMark::Failed:
        return style.bad;
    case StationMark::Open:
        return style.text;
    case StationMark::NotNeeded:
        break;
    }
    return style.muted;
}

void paintDone(QPainter &painter, const QPointF &c, double r, bool excepted,
               const PictureStyle &style)
{
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(c, r, r);
    painter.setPen(QPen(style.ground, r * 0.3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    if (excepted)
        painter.drawLine(c - QPointF(r * 0.5, 0), c + QPointF(r * 0.5, 0));
    else
        painter.drawPolyline(QPolygonF{c + QPointF(-r * 0.46, r * 0.04),
                                       c + QPointF(-r * 0.1, r * 0.4),
                                       c + QPointF(r * 0.48, -r * 0.36)});
}

void paintFailed(QPainter &painter, const QPointF &c, double r, const PictureStyle &style)
{
    const double d = r * 1.22;
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(
        QPolygonF{c + QPointF(0, -d), c + QPointF(d, 0), c + QPointF(0, d), c + QPointF(-d, 0)});
    painter.setPen(QPen(style.ground, r * 0.28, Qt::SolidLine, Qt::RoundCap));
    const double e = r * 0.36;
    painter.drawLine(c + QPointF(-e, -e), c + QPointF(e, e));
    painter.drawLine(c + QPointF(-e, e), c + QPointF(e, -e));
}

} // namespace

void paintStationMark(QPainter &painter, const QPointF &centre, double radius,
                      const StationState &state, const PictureStyle &style)
{
    painter.save();
    const QColor colour = markColour(state.mark, style);
    painter.setBrush(colour);
    switch (state.mark) {
    case StationMark::Done:
        paintDone(painter, centre, radius, state.excepted, style);
        break;
    case StationMark::Failed:
        paintFailed(painter, centre, radius, style);
        break;
    case StationMark::Open:
        painter.setBrush(style.ground);
        painter.setPen(QPen(colour, radius * 0.28));
        painter.drawEllipse(centre, radius * 0.86, radius * 0.86);
        break;
    case StationMark::NotNeeded:
        painter.setPen(Qt::NoPen);
        painter.drawRect(QRectF(centre.x() - radius * 0.7, centre.y() - radius * 0.16, radius * 1.4,
                                radius * 0.32));
        break;
    }
    painter.restore();
}

void paintJobLine(QPainter &painter, const QRectF &rect, const std::vector<StationState> &line,
                  const PictureStyle &style)
{
    if (line.empty())
        return;
    painter.save();
    const double width = rect.width() / double(line.size());
    QStringList names;
    for (const StationState &state : line)
        names << state.name();
    const QFont nameFont = fittedFont(style.font, names, width * 0.94);
    QFont wordFont = nameFont;
    wordFont.setPixelSize(std::max(1, int(nameFont.pixelSize() * 0.88)));
    const QFontMetricsF nameMetrics(nameFont), wordMetrics(wordFont);
    const double radius = nameFont.pixelSize() * 0.62;
    const double y = rect.top() + radius * 1.4;
    const double nameY = y + radius * 1.9 + nameMetrics.ascent();
    const double wordY = nameY + wordMetrics.height() * 1.02;

    // The track, interrupted at every mark and broken towards what is not done yet.
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const bool reached =
            line[i + 1].mark == StationMark::Done || line[i + 1].mark == StationMark::NotNeeded;
        QPen pen(reached ? style.good : style.muted, radius * (reached ? 0.22 : 0.16));
        if (!reached)
            pen.setDashPattern({3, 4});
        painter.setPen(pen);
        painter.drawLine(QPointF(stationX(rect, line.size(), i) + radius * 1.6, y),
                         QPointF(stationX(rect, line.size(), i + 1) - radius * 1.6, y));
    }
    for (std::size_t i = 0; i < line.size(); ++i) {
        const QPointF centre(stationX(rect, line.size(), i), y);
        paintStationMark(painter, centre, radius, line[i], style);
        painter.setPen(style.text);
        painter.setFont(nameFont);
        const double half = nameMetrics.horizontalAdvance(names[qsizetype(i)]) / 2;
        painter.drawText(QPointF(centre.x() - half, nameY), names[qsizetype(i)]);
        if (line[i].next) {
            painter.setPen(QPen(style.accent, radius * 0.18));
            painter.drawLine(QPointF(centre.x() - half, nameY + nameMetrics.descent() * 0.7),
                             QPointF(centre.x() + half, nameY + nameMetrics.descent() * 0.7));
        }
        painter.setPen(line[i].mark == StationMark::Failed ? style.bad : style.muted);
        painter.setFont(wordFont);
        painter.drawText(
            QPointF(centre.x() - wordMetrics.horizontalAdvance(line[i].word()) / 2, wordY),
            line[i].word());
    }
    painter.restore();
}

int stationAt(const QRectF &rect, std::size_t stations, const QPointF &point)
{
    if (!rect.contains(point) || stations == 0)
        return -1;
    const int index = int((point.x() - rect.left()) / rect.width() * double(stations));
    return std::clamp(index, 0, int(stations) - 1);
}

} // namespace loopwright
