#include "app/desktop/widgets/OneLine.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QPainter>

#include <algorithm>

namespace loopwright {

namespace {

/// A longer beginning is shortened all the same: else it would push all else aside.
constexpr double mostKeptEm = 20;

} // namespace

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
    const QFontMetrics metrics = fontMetrics();
    const bool whole = m_kept == text();
    const int kept = metrics.horizontalAdvance(whole ? m_kept : m_kept + QChar(0x2026));
    return {m_kept.isEmpty() ? 0 : std::min(kept + em(0.2), em(mostKeptEm)), metrics.height()};
}

void OneLine::setKept(const QString &beginning)
{
    m_kept = beginning;
    updateGeometry();
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
