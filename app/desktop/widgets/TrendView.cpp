#include "app/desktop/widgets/TrendView.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/PictureLook.h"
#include "app/print/TrendPlot.h"

namespace loopwright {

TrendView::TrendView(QWidget *parent)
    : QWidget(parent)
{
    setObjectName(QStringLiteral("circuit.trend"));
    whenThemed(this, [this] { updateGeometry(); });
    show(std::nullopt);
}

void TrendView::show(std::optional<CircuitFigure> figure)
{
    m_figure = std::move(figure);
    QStringList words;
    if (m_figure)
        for (const CircuitReading &reading : m_figure->readings)
            words << tr("%1, order %2: %3 %4")
                         .arg(dayText(reading.at.localDate()), reading.order,
                              localizedFigure(reading.value), localizedFigure(m_figure->unit));
    setAccessibleName(m_figure ? tr("Readings of %1").arg(localized(m_figure->name))
                               : tr("Readings over time"));
    setAccessibleDescription(words.join(QStringLiteral("; ")));
    update();
}

QSize TrendView::sizeHint() const
{
    return {em(26), em(16)};
}

QSize TrendView::minimumSizeHint() const
{
    return {em(14), em(9)};
}

void TrendView::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const QRectF whole = QRectF(rect()).adjusted(em(0.4), em(0.4), -em(0.4), -em(0.4));
    if (m_figure) {
        paintTrend(painter, whole, *m_figure, screenPictureStyle(colours().base, 0.9));
        return;
    }
    painter.setPen(colours().muted);
    painter.setFont(sized(1));
    painter.drawText(whole, Qt::AlignCenter | Qt::TextWordWrap,
                     tr("What was measured is drawn here over time."));
}

} // namespace loopwright
