#include "app/desktop/widgets/OneLine.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QPainter>

namespace loopwright {

OneLine::OneLine(const QString &objectName, QWidget *parent)
    : QLabel(parent)
{
    setObjectName(objectName);
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    setForegroundRole(QPalette::PlaceholderText);
    whenThemed(this, [this] { setFont(sized(0.95)); });
}

QSize OneLine::minimumSizeHint() const
{
    return {0, fontMetrics().height()};
}

void OneLine::setText(const QString &text)
{
    QLabel::setText(text);
    setToolTip(asTip(text));
    setAccessibleName(text);
}

void OneLine::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(text().simplified(), Qt::ElideRight, width()));
}

} // namespace loopwright
