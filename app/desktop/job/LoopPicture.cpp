#include "app/desktop/job/LoopPicture.h"

#include "app/desktop/Language.h"
#include "app/desktop/PictureLook.h"
#include "app/print/LoopDrawing.h"
#include "app/print/LossCurve.h"

#include <QPainter>

namespace loopwright {

LoopPicture::LoopPicture(const LimitSet &limits, bool withCurve, QWidget *parent)
    : QWidget(parent)
    , m_limits(limits)
    , m_withCurve(withCurve)
{
    setAccessibleName(tr("Drawing of the pair"));
    whenThemed(this, [this] { updateGeometry(); });
}

void LoopPicture::setMakeup(std::optional<LoopMakeup> makeup)
{
    if (m_makeup == makeup)
        return;
    m_makeup = std::move(makeup);
    QStringList words;
    for (std::size_t i = 0; m_makeup && i < m_makeup->elements.size(); ++i)
        words << localized(m_makeup->textAt(i));
    setAccessibleDescription(words.join("; "));
    update();
}

QSize LoopPicture::sizeHint() const
{
    return {em(30), em(m_withCurve ? 24 : 11)};
}

QSize LoopPicture::minimumSizeHint() const
{
    return {em(16), em(m_withCurve ? 20 : 9)};
}

void LoopPicture::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const PictureStyle style = screenPictureStyle(colours().base, 0.9);
    const QRectF whole = QRectF(rect()).adjusted(em(0.3), em(0.3), -em(0.3), -em(0.3));
    if (!m_makeup) {
        painter.setPen(style.muted);
        painter.setFont(sized(1));
        painter.drawText(whole, Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The pair is drawn here as you type its elements."));
        return;
    }
    const double above = m_withCurve ? whole.height() * 0.42 : whole.height();
    paintLoop(painter, QRectF(whole.topLeft(), QSizeF(whole.width(), above)), *m_makeup, style);
    if (m_withCurve)
        paintCurve(painter, whole.adjusted(0, above + em(0.6), 0, 0),
                   curveData(*m_makeup, m_limits), style);
}

} // namespace loopwright
