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

/// The style's font, set smaller if the longest text would not fit into `width`.
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

/// Lays the line out once, then draws track, marks and words.
class LinePainter
{
public:
    LinePainter(QPainter &painter, const QRectF &rect, const std::vector<StationState> &line,
                const PictureStyle &style, bool withWords)
        : m_painter(painter)
        , m_rect(rect)
        , m_line(line)
        , m_style(style)
        , m_withWords(withWords)
    {
        QStringList names;
        for (const StationState &state : line)
            names << style.say(state.name()) << style.say(state.word());
        m_nameFont = fittedFont(style.font, names, rect.width() / double(line.size()) * 0.94);
        m_wordFont = m_nameFont;
        // Smaller than the names, but not much smaller than usual where these are small already.
        m_wordFont.setPixelSize(
            std::max(int(m_nameFont.pixelSize() * 0.88),
                     std::min(m_nameFont.pixelSize(), int(style.font.pixelSize() * 0.82))));
        m_radius = m_nameFont.pixelSize() * 0.62;
        m_y = rect.top() + m_radius * 1.4;
    }

    void paint() const
    {
        paintTrack();
        for (std::size_t i = 0; i < m_line.size(); ++i) {
            paintStationMark(m_painter, QPointF(x(i), m_y), m_radius, m_line[i], m_style);
            paintWords(i);
        }
    }

private:
    double x(std::size_t index) const { return stationX(m_rect, m_line.size(), index); }

    static bool behind(const StationState &state)
    {
        return state.mark == StationMark::Done || state.mark == StationMark::NotNeeded;
    }

    /// Solid as far as the work is done, broken from there on.
    void paintTrack() const
    {
        for (std::size_t i = 0; i + 1 < m_line.size(); ++i) {
            const bool done = behind(m_line[i]) && behind(m_line[i + 1]);
            QPen pen(done ? m_style.good : m_style.muted, m_radius * (done ? 0.22 : 0.16));
            if (!done)
                pen.setDashPattern({3, 4});
            m_painter.setPen(pen);
            m_painter.drawLine(QPointF(x(i) + m_radius * 1.6, m_y),
                               QPointF(x(i + 1) - m_radius * 1.6, m_y));
        }
    }

    void paintWords(std::size_t i) const
    {
        const StationState &state = m_line[i];
        const QFontMetricsF names(m_nameFont), words(m_wordFont);
        const double nameY = m_y + m_radius * 1.9 + names.ascent();
        const QString name = m_style.say(state.name()), word = m_style.say(state.word());
        const double half = names.horizontalAdvance(name) / 2;
        m_painter.setFont(m_nameFont);
        m_painter.setPen(m_style.text);
        m_painter.drawText(QPointF(x(i) - half, nameY), name);
        if (state.next) {
            const double under = nameY + names.descent() * 0.7;
            m_painter.setPen(QPen(m_style.accent, m_radius * 0.18));
            m_painter.drawLine(QPointF(x(i) - half, under), QPointF(x(i) + half, under));
        }
        if (!m_withWords)
            return;
        m_painter.setFont(m_wordFont);
        m_painter.setPen(state.mark == StationMark::Failed ? m_style.bad : m_style.muted);
        m_painter.drawText(
            QPointF(x(i) - words.horizontalAdvance(word) / 2, nameY + words.height() * 1.02), word);
    }

    QPainter &m_painter;
    QRectF m_rect;
    const std::vector<StationState> &m_line;
    const PictureStyle &m_style;
    bool m_withWords;
    QFont m_nameFont, m_wordFont;
    double m_radius = 0;
    double m_y = 0;
};

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
                  const PictureStyle &style, bool withWords)
{
    if (line.empty() || rect.width() < double(line.size()) * 4)
        return; // no room for anything that could be read
    painter.save();
    LinePainter(painter, rect, line, style, withWords).paint();
    painter.restore();
}

} // namespace loopwright
