#include "app/desktop/job/PanelTitle.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>

namespace loopwright {

namespace {

QFont titleFont()
{
    return sized(1.2, QFont::DemiBold);
}

/// Pointing right while folded, else down.
QPainterPath arrow(const QRectF &square, bool folded)
{
    QPainterPath path;
    const QPointF middle = square.center();
    const double half = square.width() / 2;
    if (folded) {
        path.moveTo(middle + QPointF(-half / 2, -half));
        path.lineTo(middle + QPointF(half / 2, 0));
        path.lineTo(middle + QPointF(-half / 2, half));
    } else {
        path.moveTo(middle + QPointF(-half, -half / 2));
        path.lineTo(middle + QPointF(0, half / 2));
        path.lineTo(middle + QPointF(half, -half / 2));
    }
    return path;
}

} // namespace

PanelTitle::PanelTitle(const QString &title, QWidget *parent)
    : QAbstractButton(parent)
{
    setText(title);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    whenThemed(this, [this] { updateGeometry(); });
    tellName();
}

void PanelTitle::setFolded(bool folded)
{
    m_folded = folded;
    tellName();
    update();
}

void PanelTitle::say(Status sign, const QString &standing)
{
    m_sign = sign;
    m_standing = standing;
    setToolTip(asTip(standing));
    tellName();
    update();
}

void PanelTitle::tellName()
{
    const QString folded = m_folded ? tr("folded") : tr("unfolded");
    setAccessibleName(tr("%1, %2. %3").arg(text(), folded, m_standing).trimmed());
}

int PanelTitle::titleWidth() const
{
    return em(1.5) + QFontMetrics(titleFont()).horizontalAdvance(text());
}

QSize PanelTitle::sizeHint() const
{
    return {titleWidth(), em(hitEm)};
}

void PanelTitle::paintEvent(QPaintEvent *)
{
    const Colours &c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(underMouse() ? c.accent : c.muted, em(0.12), Qt::SolidLine, Qt::RoundCap));
    painter.drawPath(
        arrow(QRectF(em(0.1), (height() - em(0.6)) / 2.0, em(0.6), em(0.6)), m_folded));
    painter.setFont(titleFont());
    painter.setPen(underMouse() ? c.accent : c.text);
    painter.drawText(QRect(em(1.3), 0, titleWidth(), height()), Qt::AlignLeft | Qt::AlignVCenter,
                     text());
    if (!m_folded || m_standing.isEmpty())
        return;
    // A column of its own, so that the standings of all folded parts can be read down the page.
    const int left = std::max(titleWidth() + em(1), std::min(em(18), width() / 3));
    if (m_sign != Status::None)
        drawGlyph(painter, shapeOf(m_sign), QRectF(left, (height() - em(1)) / 2.0, em(1), em(1)),
                  colourOf(m_sign), palette().color(backgroundRole()));
    painter.setFont(sized(1));
    painter.setPen(c.muted);
    const QRect words(left + em(1.5), 0, width() - left - em(1.5), height());
    painter.drawText(
        words, Qt::AlignLeft | Qt::AlignVCenter,
        painter.fontMetrics().elidedText(m_standing.simplified(), Qt::ElideRight, words.width()));
}

void PanelTitle::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        return click();
    QAbstractButton::keyPressEvent(event);
}

} // namespace loopwright
