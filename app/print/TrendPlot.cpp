#include "app/print/TrendPlot.h"

#include "core/base/PaperTime.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <optional>

namespace loopwright {

namespace {

/// 1, 2 or 5 times a power of ten, so that about `steps` of them make the span.
double niceStep(double span, double steps)
{
    const double raw = span / steps;
    const double power = std::pow(10, std::floor(std::log10(raw)));
    for (const double times : {1.0, 2.0, 5.0})
        if (raw <= times * power)
            return times * power;
    return 10 * power;
}

class TrendPlot
{
public:
    TrendPlot(QPainter &painter, const QRectF &rect, const CircuitFigure &figure,
              const PictureStyle &style)
        : m_painter(painter)
        , m_style(style)
        , m_figure(figure)
        , m_metrics(style.font)
    {
        QString title = style.say(figure.name.english());
        title[0] = title[0].toUpper();
        m_title = figure.unit.isEmpty() ? title : title + ", " + style.say(figure.unit);
        m_verdict = style.say(figure.limitText.english());
        m_rect = rect;
        const double head = pictureHeadHeight(rect.width(), m_title, m_verdict, style);
        const double left = m_metrics.horizontalAdvance("0.0000e-00") * 0.8;
        m_plot = rect.adjusted(left, head + em() * 0.9, -em() * 0.8, -em() * 2.6);
        const auto room = std::size_t(std::max(1.0, m_plot.width() / (em() * 1.2)));
        const std::size_t shown = std::min(room, figure.readings.size());
        m_readings = std::span(figure.readings).last(shown);
        findRange();
    }

    void paint()
    {
        if (m_plot.width() < em() * 2 || m_plot.height() < em() * 2)
            return;
        paintPictureHead(m_painter, m_rect, m_title, m_verdict, m_style);
        paintScale();
        paintOrders();
        paintLimit();
        paintReadings();
    }

private:
    double em() const { return m_metrics.height(); }
    double x(std::size_t index) const
    {
        return m_plot.left() + m_plot.width() * (double(index) + 0.5) / double(m_readings.size());
    }
    double y(double value) const
    {
        return m_plot.bottom() - m_plot.height() * (value - m_least) / (m_most - m_least);
    }

    void findRange()
    {
        m_least = m_most = m_readings.front().value;
        for (const CircuitReading &reading : m_readings) {
            m_least = std::min(m_least, reading.value);
            m_most = std::max(m_most, reading.value);
        }
        if (m_figure.limit) {
            m_least = std::min(m_least, *m_figure.limit);
            m_most = std::max(m_most, *m_figure.limit);
        }
        if (m_least > 0 && m_least < 0.5 * m_most)
            m_least = 0;
        if (m_most <= m_least) {
            const double half = std::max(std::abs(m_most) * 0.1, 1e-9);
            m_least -= half;
            m_most += half;
        }
        m_step = niceStep(m_most - m_least, 3);
        m_least = std::floor(m_least / m_step) * m_step;
        m_most = std::ceil((m_most + 0.1 * m_step) / m_step) * m_step;
    }

    QString valueWord(double value) const { return m_style.say(QString::number(value, 'g', 4)); }

    void paintScale()
    {
        m_painter.setFont(m_style.font);
        for (double value = m_least; value <= m_most + 0.5 * m_step; value += m_step) {
            m_painter.setPen(QPen(m_style.line, em() * 0.06));
            m_painter.drawLine(QPointF(m_plot.left(), y(value)), QPointF(m_plot.right(), y(value)));
            m_painter.setPen(m_style.muted);
            m_painter.drawText(QRectF(m_rect.left(), y(value) - em(),
                                      m_plot.left() - m_rect.left() - em() * 0.3, em() * 2),
                               Qt::AlignRight | Qt::AlignVCenter,
                               valueWord(std::abs(value) < m_step * 1e-6 ? 0 : value));
        }
    }

    /// Each order's number under its readings and each day below its own, as long as there is room.
    void paintOrders()
    {
        double orderFree = m_plot.left(), dayFree = m_rect.left();
        for (std::size_t i = 0; i < m_readings.size(); ++i) {
            const CircuitReading &reading = m_readings[i];
            const CircuitReading *before = i > 0 ? &m_readings[i - 1] : nullptr;
            const double left =
                m_plot.left() + m_plot.width() * double(i) / double(m_readings.size());
            const bool otherOrder = !before || before->order != reading.order;
            if (before && otherOrder) {
                QPen pen(m_style.muted, em() * 0.06);
                pen.setDashPattern({2, 3});
                m_painter.setPen(pen);
                m_painter.drawLine(QPointF(left, m_plot.top()), QPointF(left, m_plot.bottom()));
            }
            m_painter.setPen(m_style.muted);
            if (otherOrder)
                orderFree = paintWord(reading.order, left, m_plot.bottom() + em() * 0.2, orderFree);
            if (otherOrder || before->at.localDate() != reading.at.localDate()) {
                const QString day = m_style.say(paperDay(reading.at.localDate()));
                const double begin =
                    std::max(m_rect.left(), x(i) - m_metrics.horizontalAdvance(day) / 2);
                dayFree = paintWord(day, begin, m_plot.bottom() + em() * 1.3, dayFree);
            }
        }
    }
    /// Where the next word may begin.
    double paintWord(const QString &word, double left, double top, double free)
    {
        const double width = m_metrics.horizontalAdvance(word);
        left = std::min(left, m_rect.right() - width);
        if (left < free)
            return free;
        m_painter.drawText(QPointF(left, top + m_metrics.ascent()), word);
        return left + width + em() * 0.6;
    }

    /// Whether the line through the readings, or a sign on it, meets the area.
    bool crossesReadings(const QRectF &area) const
    {
        const QRectF near = area.adjusted(-em() * 0.3, -em() * 0.3, em() * 0.3, em() * 0.3);
        std::optional<QPointF> before;
        for (std::size_t i = 0; i < m_readings.size(); ++i) {
            const QPointF at(x(i), y(m_readings[i].value));
            if (near.contains(at))
                return true;
            if (m_readings[i].state == ReadingState::Aside)
                continue;
            if (before && at.x() > near.left() && before->x() < near.right()) {
                const auto height = [&](double place) {
                    return before->y() +
                           (at.y() - before->y()) * (place - before->x()) / (at.x() - before->x());
                };
                const double a = height(std::max(before->x(), near.left())),
                             b = height(std::min(at.x(), near.right()));
                if (std::min(a, b) < near.bottom() && std::max(a, b) > near.top())
                    return true;
            }
            before = at;
        }
        return false;
    }

    void paintLimit()
    {
        if (!m_figure.limit)
            return;
        QPen pen(m_style.text, em() * 0.1);
        pen.setDashPattern({5, 3});
        m_painter.setPen(pen);
        const double at = y(*m_figure.limit);
        m_painter.drawLine(QPointF(m_plot.left(), at), QPointF(m_plot.right(), at));
        const QString word = m_style.say("limit") + ' ' + valueWord(*m_figure.limit);
        const double width = m_metrics.horizontalAdvance(word) + em() * 0.4;
        const QRectF above(m_plot.right() - width, at - em() * 1.15, width, em());
        const QRectF below = above.translated(0, em() * 1.3);
        const bool isRoom = above.top() > m_plot.top() - em() * 0.5;
        const bool isBetter =
            crossesReadings(above) && !crossesReadings(below) && below.bottom() < m_plot.bottom();
        const QRectF place = isRoom && !isBetter ? above : below;
        m_painter.fillRect(place, m_style.ground);
        m_painter.drawText(place, Qt::AlignCenter, word);
    }

    void paintReadings()
    {
        QPolygonF line;
        for (std::size_t i = 0; i < m_readings.size(); ++i)
            if (m_readings[i].state != ReadingState::Aside)
                line << QPointF(x(i), y(m_readings[i].value));
        m_painter.setPen(QPen(m_style.accent, em() * 0.1));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPolyline(line);
        const bool named = m_plot.width() / double(m_readings.size()) > em() * 3;
        for (std::size_t i = 0; i < m_readings.size(); ++i) {
            const QPointF at(x(i), y(m_readings[i].value));
            paintSign(at, m_readings[i].state);
            if (!named)
                continue;
            m_painter.setPen(m_style.text);
            const bool above = at.y() - em() * 1.4 > m_plot.top();
            m_painter.drawText(QRectF(at.x() - em() * 3,
                                      at.y() + (above ? -em() * 1.5 : em() * 0.5), em() * 6, em()),
                               Qt::AlignCenter, valueWord(m_readings[i].value));
        }
    }

    void paintSign(const QPointF &at, ReadingState state)
    {
        const double r = em() * 0.3;
        const QPen outline(state == ReadingState::Aside ? m_style.muted : m_style.good,
                           em() * 0.12);
        switch (state) {
        case ReadingState::Met:
            m_painter.setPen(outline);
            m_painter.setBrush(m_style.good);
            m_painter.drawEllipse(at, r, r);
            break;
        case ReadingState::NearLimit:
            m_painter.setPen(QPen(m_style.doubtful, em() * 0.25));
            m_painter.setBrush(m_style.ground);
            m_painter.drawEllipse(at, r, r);
            break;
        case ReadingState::NotMet:
            m_painter.setPen(Qt::NoPen);
            m_painter.setBrush(m_style.ground);
            m_painter.drawEllipse(at, r, r);
            m_painter.setPen(QPen(m_style.bad, em() * 0.18));
            m_painter.drawLine(at - QPointF(r, r), at + QPointF(r, r));
            m_painter.drawLine(at - QPointF(r, -r), at + QPointF(r, -r));
            break;
        case ReadingState::Aside:
            m_painter.setPen(outline);
            m_painter.setBrush(m_style.ground);
            m_painter.drawEllipse(at, r * 0.8, r * 0.8);
            break;
        }
    }

    QPainter &m_painter;
    const PictureStyle &m_style;
    const CircuitFigure &m_figure;
    QFontMetricsF m_metrics;
    QRectF m_rect, m_plot;
    QString m_title, m_verdict;
    std::span<const CircuitReading> m_readings;
    double m_least = 0, m_most = 1, m_step = 1;
};

} // namespace

void paintTrend(QPainter &painter, const QRectF &rect, const CircuitFigure &figure,
                const PictureStyle &style)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    TrendPlot(painter, rect, figure, style).paint();
    painter.restore();
}

} // namespace loopwright
