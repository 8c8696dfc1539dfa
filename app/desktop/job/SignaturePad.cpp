#include "app/desktop/job/SignaturePad.h"

#include "app/desktop/Theme.h"
#include "core/certificate/CertificateContent.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace loopwright {

SignaturePad::SignaturePad(const QString &name, QWidget *parent)
    : QWidget(parent)
{
    setAccessibleName(name);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::CrossCursor);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void SignaturePad::setStrokes(const Strokes &strokes)
{
    m_strokes = strokes;
    update();
}

QSize SignaturePad::sizeHint() const
{
    return {em(24), em(6)};
}

QSize SignaturePad::minimumSizeHint() const
{
    return {em(12), em(3)};
}

QRectF SignaturePad::field() const
{
    const double factor =
        std::min(width() / double(signatureWidth), height() / double(signatureHeight));
    return {0, 0, signatureWidth * factor, signatureHeight * factor};
}

QPoint SignaturePad::scaled(const QPointF &at) const
{
    const double factor = signatureWidth / std::max(field().width(), 1.0);
    return {std::clamp(int(at.x() * factor), 0, signatureWidth),
            std::clamp(int(at.y() * factor), 0, signatureHeight)};
}

void SignaturePad::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours &c = colours();
    painter.setPen(QPen(c.frame, 1));
    painter.setBrush(c.base);
    painter.drawRect(field().adjusted(0.5, 0.5, -0.5, -0.5));
    const double factor = field().width() / signatureWidth;
    const double line = field().height() * 0.78;
    painter.setPen(QPen(c.line, 1));
    painter.drawLine(QPointF(em(0.6), line), QPointF(field().width() - em(0.6), line));
    if (m_strokes.empty()) {
        painter.setPen(c.muted);
        painter.drawText(field(), Qt::AlignCenter, tr("Sign here; Delete wipes it"));
    }
    painter.setPen(QPen(c.text, em(0.14), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const std::vector<QPoint> &stroke : m_strokes) {
        QPolygonF polygon;
        for (const QPoint &point : stroke)
            polygon << QPointF(point) * factor;
        polygon.size() == 1 ? painter.drawPoint(polygon.front()) : painter.drawPolyline(polygon);
    }
}

void SignaturePad::mousePressEvent(QMouseEvent *event)
{
    m_strokes.push_back({scaled(event->position())});
    update();
}

void SignaturePad::mouseMoveEvent(QMouseEvent *event)
{
    const QPoint point = scaled(event->position());
    if (m_strokes.empty() || m_strokes.back().back() == point)
        return;
    m_strokes.back().push_back(point);
    update();
}

void SignaturePad::mouseReleaseEvent(QMouseEvent *)
{
    emit drawn();
}

void SignaturePad::keyPressEvent(QKeyEvent *event)
{
    if (event->key() != Qt::Key_Delete && event->key() != Qt::Key_Backspace)
        return QWidget::keyPressEvent(event);
    m_strokes.clear();
    update();
    emit drawn();
}

QJsonArray SignaturePad::strokesJson() const
{
    QJsonArray list;
    for (const auto &stroke : m_strokes) {
        QJsonArray points;
        for (const QPoint &point : stroke)
            points << point.x() << point.y();
        list << points;
    }
    return list;
}

SignaturePad::Strokes SignaturePad::strokesOf(const QJsonValue &value)
{
    SignaturePad::Strokes strokes;
    for (const QJsonValue &entry : value.toArray()) {
        const QJsonArray points = entry.toArray();
        std::vector<QPoint> stroke;
        for (qsizetype i = 0; i + 1 < points.size(); i += 2)
            stroke.emplace_back(points[i].toInt(), points[i + 1].toInt());
        if (!stroke.empty())
            strokes.push_back(std::move(stroke));
    }
    return strokes;
}

} // namespace loopwright
