#include "app/print/LoopDrawing.h"

#include "app/print/PaperLanguage.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>

namespace loopwright {

namespace {

constexpr int lanes = 4; ///< levels on which taps hang, so that neighbours do not meet

/// Thickness of a wire in the drawing, in heights of the font.
double wireWeight(const Wire &wire)
{
    // Diameters of the gauges in mm (AWG: 0.127 * 92^((36 - n) / 39)).
    const double diameter =
        wire.gaugeAwg > 0 ? 0.127 * std::pow(92.0, (36.0 - wire.gaugeAwg) / 39.0) : wire.diameterMm;
    return 0.08 + 0.22 * diameter;
}

class Drawing
{
public:
    Drawing(QPainter &painter, const QRectF &rect, const LoopMakeup &makeup,
            const PictureStyle &style)
        : m_painter(painter)
        , m_makeup(makeup)
        , m_style(style)
        , m_metrics(style.font)
    {
        m_small = style.font;
        m_small.setPixelSize(std::max(1, int(style.font.pixelSize() * 0.9)));
        const double ends = m_metrics.horizontalAdvance(m_style.say("Premises")) * 1.25;
        m_left = rect.left() + ends;
        m_right = rect.right() - ends;
        m_bottom = rect.bottom();
        m_feet = std::max(1.0, makeup.workingLengthFt());
        hangTaps();
        const double above = em() * 2.6, below = em() * 2.2;
        const double room = std::max(0.0, rect.height() - above - below);
        const double used = double(m_usedLanes) + 0.6;
        m_laneStep = std::min(em() * 2.4, room / used);
        m_y = rect.top() + above + (room - used * m_laneStep) * 0.4;
    }

    void paint()
    {
        if (m_right - m_left < em() * 2)
            return; // no room for anything that could be read
        paintEnds();
        double feet = 0;
        for (const LoopElement &element : m_makeup.elements)
            if (element.type == ElementType::Section) {
                paintSection(element, feet);
                feet += element.length.feet();
            }
        for (const Tap &tap : m_taps)
            paintTap(tap);
        feet = 0;
        for (const LoopElement &element : m_makeup.elements) {
            if (element.type == ElementType::Section)
                feet += element.length.feet();
            else if (element.type == ElementType::LoadCoil)
                paintCoil(element, feet);
        }
        paintScale();
    }

private:
    double em() const { return m_metrics.height(); }
    double xOf(double feet) const { return m_left + (m_right - m_left) * feet / m_feet; }

    void centred(double x, double baseline, const QString &text, const QColor &colour,
                 const QFont &font) const
    {
        const double width = QFontMetricsF(font).horizontalAdvance(text);
        m_painter.setFont(font);
        m_painter.setPen(colour);
        m_painter.drawText(QPointF(x - width / 2, baseline), text);
    }

    /// The office is a square, the customer a house.
    void paintEnds() const
    {
        const double r = em() * 0.55;
        m_painter.setPen(QPen(m_style.text, em() * 0.1));
        m_painter.setBrush(m_style.ground);
        m_painter.drawRect(QRectF(m_left - 2.4 * r, m_y - r, 2 * r, 2 * r));
        m_painter.drawLine(QPointF(m_left - 0.4 * r, m_y), QPointF(m_left, m_y));
        m_painter.drawLine(QPointF(m_right, m_y), QPointF(m_right + 0.4 * r, m_y));
        const double house = m_right + 0.4 * r;
        m_painter.drawPolygon(QPolygonF{QPointF(house, m_y + r), QPointF(house, m_y - 0.3 * r),
                                        QPointF(house + r, m_y - 1.3 * r),
                                        QPointF(house + 2 * r, m_y - 0.3 * r),
                                        QPointF(house + 2 * r, m_y + r)});
        centred(m_left - 1.4 * r, m_y - em() * 1.1, m_style.say("Office"), m_style.muted, m_small);
        centred(house + r, m_y - em() * 1.1, m_style.say("Premises"), m_style.muted, m_small);
    }

    void paintSection(const LoopElement &element, double feet) const
    {
        const double from = xOf(feet), to = xOf(feet + element.length.feet());
        m_painter.setPen(
            QPen(m_style.accent, em() * wireWeight(element.wire), Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLine(QPointF(from, m_y), QPointF(to, m_y));
        m_painter.setPen(QPen(m_style.text, em() * 0.07));
        for (const double x : {from, to})
            m_painter.drawLine(QPointF(x, m_y - em() * 0.35), QPointF(x, m_y + em() * 0.35));
        // Wire and length above the section, as far as they find room.
        const QFontMetricsF small(m_small);
        const QString both = element.wire.text() + ", " + element.length.text();
        if (small.horizontalAdvance(both) < to - from - em() * 0.4) {
            centred((from + to) / 2, m_y - em() * 0.75, both, m_style.text, m_small);
        } else if (small.horizontalAdvance(element.length.text()) < to - from) {
            centred((from + to) / 2, m_y - em() * 0.75, element.length.text(), m_style.text,
                    m_small);
            centred((from + to) / 2, m_y - em() * 1.7, element.wire.text(), m_style.muted, m_small);
        }
    }

    /// A tap as it is drawn: from where it joins, down to its lane, along to its open end.
    struct Tap
    {
        const LoopElement *element;
        double x, end;
        QString text;
        double textX;
        std::size_t lane;
    };

    void hangTaps()
    {
        double feet = 0;
        for (const LoopElement &element : m_makeup.elements) {
            if (element.type == ElementType::Section)
                feet += element.length.feet();
            else if (element.type == ElementType::BridgedTap)
                hangTap(element, xOf(feet));
        }
    }

    /// To scale, towards the customer if there is room, else back towards the office; a tap that
    /// is longer than the loop is cut, its figure stands beside it.
    void hangTap(const LoopElement &element, double x)
    {
        const double length =
            std::min((m_right - m_left) * element.length.feet() / m_feet, m_right - m_left);
        const bool backwards = x + length > m_right + em();
        const double end = backwards ? std::max(x - length, m_left - em()) : x + length;
        const QString text =
            m_style.say(QString("tap of %1, %2").arg(element.wire.text(), element.length.text()));
        const double width = QFontMetricsF(m_small).horizontalAdvance(text);
        const bool textLeft = backwards || x + em() * 0.4 + width > m_right + em() * 2;
        const double textX = textLeft ? x - em() * 0.4 - width : x + em() * 0.4;
        const double from = std::min({x, end, textX}), to = std::max({x, end, textX + width});
        m_taps.push_back({&element, x, end, text, textX, freeLane(from, to)});
    }

    /// The first lane in which nothing lies between the two places yet.
    std::size_t freeLane(double from, double to)
    {
        std::size_t lane = 0;
        const auto meets = [this, from, to](const QPointF &range) {
            return range.x() < to + em() * 0.5 && from < range.y() + em() * 0.5;
        };
        while (lane + 1 < m_lanes.size() &&
               std::any_of(m_lanes[lane].begin(), m_lanes[lane].end(), meets))
            ++lane;
        m_lanes[lane].push_back(QPointF(from, to));
        m_usedLanes = std::max(m_usedLanes, lane + 1);
        return lane;
    }

    void paintTap(const Tap &tap) const
    {
        const double y = m_y + m_laneStep * (double(tap.lane) + 1.3);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(m_style.doubtful, em() * wireWeight(tap.element->wire), Qt::SolidLine,
                              Qt::FlatCap, Qt::MiterJoin));
        m_painter.drawPolyline(
            QPolygonF{QPointF(tap.x, m_y), QPointF(tap.x, y), QPointF(tap.end, y)});
        m_painter.setPen(QPen(m_style.doubtful, em() * 0.1));
        m_painter.setBrush(m_style.ground);
        m_painter.drawEllipse(QPointF(tap.end, y), em() * 0.2, em() * 0.2);
        m_painter.setFont(m_small);
        m_painter.setPen(m_style.text);
        m_painter.drawText(QPointF(tap.textX, y - em() * 0.35), tap.text);
    }

    void paintCoil(const LoopElement &element, double feet) const
    {
        const double x = xOf(feet), r = em() * 0.28;
        m_painter.fillRect(QRectF(x - 3.1 * r, m_y - em() * 0.45, 6.2 * r, em() * 0.9),
                           m_style.ground);
        QPainterPath path(QPointF(x - 3 * r, m_y));
        for (int turn = 0; turn < 3; ++turn)
            path.arcTo(QRectF(x - 3 * r + turn * 2 * r, m_y - r, 2 * r, 2 * r), 180, -180);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(m_style.bad, em() * 0.13, Qt::SolidLine, Qt::RoundCap));
        m_painter.drawPath(path);
        centred(x, m_y + em() * 1.05, QString("%1 mH").arg(element.millihenry), m_style.bad,
                m_small);
    }

    /// A bar of a round length, a quarter of the loop or less.
    void paintScale() const
    {
        const bool inMetres = m_makeup.isMetric();
        const double perUnit = inMetres ? 1 / metresPerFoot : 1;
        const double longest = m_feet / perUnit / 4;
        const double power = std::pow(10, std::floor(std::log10(std::max(longest, 1.0))));
        const double round = longest >= 5 * power   ? 5 * power
                             : longest >= 2 * power ? 2 * power
                                                    : power;
        const double y = m_bottom - em() * 0.5;
        const double end = m_left + (m_right - m_left) * round * perUnit / m_feet;
        m_painter.setPen(QPen(m_style.muted, em() * 0.08));
        m_painter.drawLine(QPointF(m_left, y), QPointF(end, y));
        for (const double x : {m_left, end})
            m_painter.drawLine(QPointF(x, y - em() * 0.2), QPointF(x, y + em() * 0.2));
        m_painter.setFont(m_small);
        m_painter.setPen(m_style.muted);
        m_painter.drawText(QPointF(end + em() * 0.5, y + m_metrics.ascent() * 0.35),
                           lengthText(round * perUnit, inMetres));
        paintTotals(y, inMetres);
    }

    void paintTotals(double y, bool inMetres) const
    {
        QStringList parts{lengthText(m_makeup.workingLengthFt(), inMetres)};
        if (m_makeup.bridgedTapFt() > 0)
            parts << onPaper("taps " + lengthText(m_makeup.bridgedTapFt(), inMetres));
        if (const int coils = m_makeup.loadCoils(); coils > 0)
            parts << onPaper(QString(coils > 1 ? "%1 load coils" : "%1 load coil").arg(coils));
        const QString total = parts.join(", ");
        const double width = QFontMetricsF(m_small).horizontalAdvance(total);
        m_painter.setPen(m_style.text);
        m_painter.drawText(QPointF(m_right - width, y + m_metrics.ascent() * 0.35), total);
    }

    QPainter &m_painter;
    const LoopMakeup &m_makeup;
    const PictureStyle &m_style;
    QFontMetricsF m_metrics;
    QFont m_small;
    double m_left, m_right, m_bottom, m_feet;
    double m_y = 0;
    std::vector<Tap> m_taps;
    std::array<std::vector<QPointF>, lanes> m_lanes; ///< from and to of what lies on each
    std::size_t m_usedLanes = 0;
    double m_laneStep = 0;
};

} // namespace

void paintLoop(QPainter &painter, const QRectF &rect, const LoopMakeup &makeup,
               const PictureStyle &style)
{
    painter.save();
    Drawing(painter, rect, makeup, style).paint();
    painter.restore();
}

} // namespace loopwright
