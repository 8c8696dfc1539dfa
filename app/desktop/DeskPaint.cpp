#include "app/desktop/DeskPaint.h"

#include "app/desktop/Theme.h"

#include <QPainter>
#include <QStyleOption>

namespace loopwright {

namespace {

constexpr double rounding = 4; ///< of corners, in pixels at 100 percent

/// Keeps the painter's state and draws smoothly meanwhile.
class Smooth
{
public:
    explicit Smooth(QPainter &painter)
        : m_painter(painter)
    {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
    }
    ~Smooth() { m_painter.restore(); }
    Smooth(const Smooth &) = delete;
    Smooth &operator=(const Smooth &) = delete;

private:
    QPainter &m_painter;
};

void roundedBox(QPainter &painter, const QRect &rect, const QPen &pen, const QBrush &brush,
                double radius)
{
    const double half = pen.widthF() / 2;
    painter.setPen(pen);
    painter.setBrush(brush);
    painter.drawRoundedRect(QRectF(rect).adjusted(half, half, -half, -half), radius, radius);
}

QColor blended(const QColor &a, const QColor &b, double share)
{
    const auto part = [share](float from, float to) {
        return float(from * (1 - share) + to * share);
    };
    return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()),
                            part(a.blueF(), b.blueF()));
}

} // namespace

void paintField(QPainter &painter, const QRect &rect, bool filled, double unit)
{
    const Smooth smooth(painter);
    roundedBox(painter, rect, QPen(colours().frame, unit),
               filled ? QBrush(colours().base) : QBrush(Qt::NoBrush), rounding * unit);
}

void paintButton(QPainter &painter, const QStyleOption &option, double unit)
{
    const Colours &c = colours();
    const Smooth smooth(painter);
    const bool enabled = option.state & QStyle::State_Enabled;
    const bool pressed = option.state & (QStyle::State_Sunken | QStyle::State_On);
    const bool hovered = enabled && (option.state & QStyle::State_MouseOver);
    const QColor ground = option.palette.color(QPalette::Button);
    const QColor fill = pressed   ? blended(ground, c.accent, 0.25)
                        : hovered ? blended(ground, c.accent, 0.10)
                                  : ground;
    roundedBox(painter, option.rect,
               QPen(enabled ? c.frame : c.line, unit, enabled ? Qt::SolidLine : Qt::DashLine), fill,
               rounding * unit);
}

void paintCheckBox(QPainter &painter, const QStyleOption &option, double unit)
{
    const Colours &c = colours();
    const Smooth smooth(painter);
    const bool on = option.state & QStyle::State_On;
    const QRect box = option.rect;
    roundedBox(painter, box, QPen(on ? c.accent : c.frame, 1.3 * unit), on ? c.accent : c.base,
               3 * unit);
    if (!on)
        return;
    const double side = box.width();
    const QPointF corner = box.topLeft();
    painter.setPen(QPen(c.onAccent, 1.8 * unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(
        QPolygonF({corner + QPointF(0.24, 0.54) * side, corner + QPointF(0.43, 0.73) * side,
                   corner + QPointF(0.78, 0.30) * side}));
}

void paintRadioButton(QPainter &painter, const QStyleOption &option, double unit)
{
    const Colours &c = colours();
    const Smooth smooth(painter);
    const bool on = option.state & QStyle::State_On;
    QRectF disc(option.rect);
    disc.adjust(1.5 * unit, 1.5 * unit, -1.5 * unit, -1.5 * unit);
    painter.setPen(QPen(on ? c.accent : c.frame, 1.3 * unit));
    painter.setBrush(c.base);
    painter.drawEllipse(disc);
    if (!on)
        return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.accent);
    painter.drawEllipse(disc.center(), disc.width() * 0.28, disc.height() * 0.28);
}

void paintComboFrame(QPainter &painter, const QStyleOptionComboBox &option, const QRect &arrow,
                     double unit)
{
    const Colours &c = colours();
    const bool enabled = option.state & QStyle::State_Enabled;
    if (option.frame)
        paintField(painter, option.rect, true, unit);
    const Smooth smooth(painter);
    const QPointF middle = QRectF(arrow).center();
    painter.setPen(
        QPen(enabled ? c.text : c.muted, 1.5 * unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF({middle + QPointF(-4, -2) * unit, middle + QPointF(0, 2) * unit,
                                    middle + QPointF(4, -2) * unit}));
}

void paintHeader(QPainter &painter, const QStyleOptionHeader &option)
{
    const Colours &c = colours();
    painter.save();
    painter.fillRect(option.rect, c.raised);
    painter.setPen(c.frame);
    painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter.restore();
}

void paintTab(QPainter &painter, const QStyleOptionTab &option, double unit)
{
    const Colours &c = colours();
    const bool chosen = option.state & QStyle::State_Selected;
    if (chosen || (option.state & QStyle::State_MouseOver))
        painter.fillRect(option.rect, chosen ? c.base : c.raised);
    if (chosen)
        painter.fillRect(QRectF(option.rect.x(), option.rect.bottom() + 1 - 3 * unit,
                                option.rect.width(), 3 * unit),
                         c.accent);
}

void paintScrollBar(QPainter &painter, const QStyleOptionSlider &option, const QRect &handle,
                    double unit)
{
    const Colours &c = colours();
    const Smooth smooth(painter);
    painter.fillRect(option.rect, option.palette.color(QPalette::Window));
    if (option.maximum <= option.minimum)
        return;
    const bool hovered = option.state & QStyle::State_MouseOver;
    const double inset = 3 * unit;
    const QRectF bar = QRectF(handle).adjusted(inset, inset, -inset, -inset);
    const double radius = qMin(bar.width(), bar.height()) / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(hovered ? c.accent : c.frame);
    painter.drawRoundedRect(bar, radius, radius);
}

void paintMenuFrame(QPainter &painter, const QRect &rect, double unit)
{
    const Smooth smooth(painter);
    roundedBox(painter, rect, QPen(colours().frame, unit), Qt::NoBrush, 0);
}

void paintMenuSeparator(QPainter &painter, const QRect &rect, double unit)
{
    const int thick = qMax(1, qRound(unit));
    const int inset = qRound(4 * unit);
    painter.fillRect(rect.x() + inset, rect.center().y() - thick / 2, rect.width() - 2 * inset,
                     thick, colours().frame);
}

void paintArrow(QPainter &painter, const QStyleOption &option, Qt::ArrowType to, double unit)
{
    const bool enabled = option.state & QStyle::State_Enabled;
    const double half =
        qMin(4 * unit, qMin(option.rect.width(), option.rect.height()) / 2.0 - unit / 2);
    const QPointF along = to == Qt::UpArrow     ? QPointF(0, -half)
                          : to == Qt::DownArrow ? QPointF(0, half)
                          : to == Qt::LeftArrow ? QPointF(-half, 0)
                                                : QPointF(half, 0);
    const QPointF across(along.y(), along.x());
    const QPointF middle = QRectF(option.rect).center();
    const Smooth smooth(painter);
    painter.setPen(Qt::NoPen);
    // A chosen line of a menu has its own colour of text.
    painter.setBrush(enabled ? option.palette.color(QPalette::WindowText) : colours().muted);
    painter.drawPolygon(QPolygonF(
        {middle - along * 0.5 - across, middle - along * 0.5 + across, middle + along * 0.5}));
}

void paintFocusFrame(QPainter &painter, const QRect &rect, double unit)
{
    const Smooth smooth(painter);
    roundedBox(painter, rect, QPen(colours().accent, 2 * unit), Qt::NoBrush, (rounding + 2) * unit);
}

} // namespace loopwright
