#include "app/print/LossCurve.h"

#include "app/print/PictureFile.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

constexpr QSizeF curveSize(900, 420);
constexpr double fromHz = 200;
constexpr double toHz = 1e6;
constexpr int points = 240;

/// The frequencies that the trade looks at.
struct Tick
{
    double hz;
    const char *text; ///< empty: a grid line alone
};
constexpr Tick ticks[] = {{200, "200 Hz"},     {500, ""},         {1000, "1 kHz"},
                          {3000, "3 kHz"},     {10000, "10 kHz"}, {40000, "40 kHz"},
                          {100000, "100 kHz"}, {300000, ""},      {1000000, "1 MHz"}};

QString dbText(double db)
{
    return QString::number(db, 'f', 1) + " dB";
}

class Curve
{
public:
    Curve(QPainter &painter, const QRectF &rect, const CurveData &data, const PictureStyle &style)
        : m_painter(painter)
        , m_data(data)
        , m_style(style)
        , m_metrics(style.font)
    {
        m_head = rect;
        m_plot = rect.adjusted(m_metrics.horizontalAdvance("100 dB "),
                               em() * 1.5 +
                                   pictureHeadHeight(rect.width(), data.title, data.verdict, style),
                               -m_metrics.horizontalAdvance("1 MHz") * 0.6, -em() * 1.6);
        double most = std::max(data.pointDb, data.limitDb) * 1.15;
        for (const QPointF &point : data.predicted)
            if (std::isfinite(point.y()))
                most = std::max(most, point.y());
        for (const QPointF &point : data.measured)
            most = std::max(most, point.y());
        m_step = most <= 60 ? 10 : most <= 130 ? 20 : 50;
        m_most = std::ceil(std::min(most, 300.0) / m_step) * m_step;
    }

    void paint()
    {
        if (m_plot.width() < 4 || m_plot.height() < 4)
            return; // no room for anything that could be read
        paintPictureHead(m_painter, m_head, m_data.title, m_data.verdict, m_style);
        paintGrid();
        paintLimit();
        paintCurveLine();
        paintPoint();
        paintMeasured();
    }

private:
    double em() const { return m_metrics.height(); }
    double xOf(double hz) const
    {
        return m_plot.left() + m_plot.width() * std::log(hz / fromHz) / std::log(toHz / fromHz);
    }
    double yOf(double db) const
    {
        return m_plot.bottom() - m_plot.height() * std::clamp(db / m_most, 0.0, 1.0);
    }

    void paintGrid() const
    {
        m_painter.setFont(m_style.font);
        const QPen hair(m_style.line, em() * 0.05);
        for (double db = 0; db <= m_most; db += m_step) {
            m_painter.setPen(hair);
            m_painter.drawLine(QPointF(m_plot.left(), yOf(db)), QPointF(m_plot.right(), yOf(db)));
            const QString text = QString::number(db, 'f', 0);
            m_painter.setPen(m_style.muted);
            m_painter.drawText(
                QPointF(m_plot.left() - m_metrics.horizontalAdvance(text) - em() * 0.4,
                        yOf(db) + m_metrics.ascent() * 0.38),
                text);
        }
        for (const Tick &tick : ticks) {
            const double x = xOf(tick.hz);
            m_painter.setPen(hair);
            m_painter.drawLine(QPointF(x, m_plot.top()), QPointF(x, m_plot.bottom()));
            const QString text = m_style.say(QString::fromLatin1(tick.text));
            m_painter.setPen(m_style.muted);
            m_painter.drawText(QPointF(x - m_metrics.horizontalAdvance(text) / 2,
                                       m_plot.bottom() + em() * 0.3 + m_metrics.ascent()),
                               text);
        }
        m_painter.setPen(m_style.muted);
        m_painter.drawText(QPointF(m_plot.left(), m_plot.top() - em() * 0.45),
                           m_style.say("insertion loss in dB"));
    }

    /// The limit holds at one frequency alone: a gate above it, hatched where the loss must not be.
    void paintLimit() const
    {
        const double x = xOf(m_data.pointHz);
        const double half = em() * 0.9;
        const QRectF gate(QPointF(x - half, m_plot.top()), QPointF(x + half, yOf(m_data.limitDb)));
        hatch(m_painter, gate, m_style, em());
        m_painter.setPen(QPen(m_style.bad, em() * 0.14));
        m_painter.drawLine(gate.bottomLeft(), gate.bottomRight());
        const QString text = m_style.say("limit " + dbText(m_data.limitDb));
        // The curve rises: a loss above the limit crosses the limit's level left of the gate.
        const double x0 = m_data.pointDb > m_data.limitDb
                              ? gate.right() + em() * 0.4
                              : gate.left() - m_metrics.horizontalAdvance(text) - em() * 0.4;
        m_painter.setPen(m_style.bad);
        m_painter.drawText(QPointF(x0, gate.bottom() + m_metrics.ascent() * 0.38), text);
    }

    void paintCurveLine() const
    {
        QPolygonF line;
        for (const QPointF &point : m_data.predicted)
            if (point.x() >= fromHz && point.x() <= toHz * 1.0001 && std::isfinite(point.y()))
                line << QPointF(xOf(point.x()), yOf(point.y()));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(
            QPen(m_style.accent, em() * 0.15, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        m_painter.drawPolyline(line);
    }

    /// A label below and beside a point, on a ground of its own; `line` of several.
    void label(const QPointF &at, int line, const QString &text, const QColor &colour) const
    {
        const double width = m_metrics.horizontalAdvance(text);
        double x = at.x() + em() * 0.7;
        if (x + width > m_plot.right())
            x = at.x() - em() * 0.7 - width;
        const double y =
            std::min(at.y() + em() * (1.35 + 1.15 * line), m_plot.bottom() - em() * 0.3);
        m_painter.fillRect(
            QRectF(x - em() * 0.15, y - m_metrics.ascent(), width + em() * 0.3, em() * 1.05),
            m_style.ground);
        m_painter.setPen(colour);
        m_painter.drawText(QPointF(x, y), text);
    }

    /// Open diamonds; a reading near the judged frequency is written below the prediction.
    void paintMeasured() const
    {
        int line = 1;
        for (const QPointF &point : m_data.measured) {
            const double r = em() * 0.5;
            QPointF at(xOf(std::clamp(point.x(), fromHz, toHz)), yOf(point.y()));
            at.setX(std::clamp(at.x(), m_plot.left() + r, m_plot.right() - r));
            at.setY(std::clamp(at.y(), m_plot.top() + r, m_plot.bottom() - r));
            m_painter.setPen(QPen(m_style.text, em() * 0.11));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawPolygon(QPolygonF{at + QPointF(0, -r), at + QPointF(r, 0),
                                            at + QPointF(0, r), at + QPointF(-r, 0)});
            const bool near = std::abs(at.x() - xOf(m_data.pointHz)) < em() * 3;
            const QPointF anchor = near ? QPointF(xOf(m_data.pointHz), yOf(m_data.pointDb)) : at;
            label(anchor, near ? line++ : 0, m_style.say("measured " + dbText(point.y())),
                  m_style.text);
        }
    }

    void paintPoint() const
    {
        const QPointF at(xOf(m_data.pointHz), yOf(m_data.pointDb));
        const QString text = m_style.say("predicted " + dbText(m_data.pointDb));
        if (m_data.pointDb > m_data.limitDb) // left of the curve, above it; its right is taken
            label(at - QPointF(m_metrics.horizontalAdvance(text) + em() * 1.8, em() * 2.2), 0, text,
                  m_style.accent);
        else
            label(at, 0, text, m_style.accent);
        m_painter.setPen(QPen(m_style.ground, em() * 0.1));
        m_painter.setBrush(m_style.accent);
        m_painter.drawEllipse(at, em() * 0.3, em() * 0.3);
    }

    QPainter &m_painter;
    const CurveData &m_data;
    const PictureStyle &m_style;
    QFontMetricsF m_metrics;
    QRectF m_plot;
    QRectF m_head;
    double m_most = 60;
    double m_step = 10;
};

} // namespace

CurveData curveData(const LoopMakeup &makeup, const LimitSet &limits)
{
    CurveData data;
    const double ohms = limits.value("bri_termination");
    const Terminations between{ohms, ohms};
    data.pointHz = limits.value("bri_loss_frequency");
    data.limitDb = limits.value("bri_loss_max");
    data.pointDb = insertionLossDb(makeup, data.pointHz, between);
    for (const LoopResponse &response : loopCurve(makeup, fromHz, toHz, points, between))
        data.predicted.push_back(QPointF(response.frequencyHz, response.lossDb));
    return data;
}

void paintCurve(QPainter &painter, const QRectF &rect, const CurveData &data,
                const PictureStyle &style)
{
    painter.save();
    Curve(painter, rect, data, style).paint();
    painter.restore();
}

QByteArray curvePng(const CurveData &data, double scale)
{
    return picturePng(curveSize, scale, [&](QPainter &painter, const QRectF &rect) {
        paintCurve(painter, rect.adjusted(10, 8, -10, -8), data, paperStyle(13));
    });
}

QByteArray curveSvg(const CurveData &data)
{
    return pictureSvg(curveSize, "Loss over frequency", [&](QPainter &painter, const QRectF &rect) {
        paintCurve(painter, rect.adjusted(10, 8, -10, -8), data, paperStyle(13));
    });
}

} // namespace loopwright
