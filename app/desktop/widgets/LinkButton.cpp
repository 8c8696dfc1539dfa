#include "app/desktop/widgets/LinkButton.h"

#include "app/desktop/Theme.h"

#include <QKeyEvent>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int flags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

int leftEdge()
{
    return em(1.5);
}

int textHeight(const QFont &font, int width, const QString &text)
{
    const QRect room(0, 0, std::max(1, width), 100'000);
    return text.isEmpty() ? 0 : QFontMetrics(font).boundingRect(room, flags, text).height();
}

} // namespace

LinkButton::LinkButton(Status sign, const QString &title, const QString &sentence, QWidget *parent)
    : QAbstractButton(parent)
    , m_sign(sign)
    , m_sentence(sentence)
{
    setText(title);
    setAccessibleName(tr("%1: %2").arg(title, sentence));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    whenThemed(this, [this] { updateGeometry(); });
}

int LinkButton::heightForWidth(int width) const
{
    const int room = width - leftEdge();
    return textHeight(sized(1, QFont::DemiBold), room, text()) +
           textHeight(sized(1), room, m_sentence) + em(0.3);
}

QSize LinkButton::sizeHint() const
{
    return {em(16), heightForWidth(em(16))};
}

QSize LinkButton::minimumSizeHint() const
{
    return {em(8), em(1.4)};
}

void LinkButton::paintEvent(QPaintEvent *)
{
    const Colours &c = colours();
    QPainter painter(this);
    drawGlyph(painter, shapeOf(m_sign), QRectF(0, em(0.15), em(1), em(1)), colourOf(m_sign),
              palette().color(backgroundRole()));
    QFont strong = sized(1, QFont::DemiBold);
    strong.setUnderline(underMouse());
    const int room = width() - leftEdge();
    const int head = textHeight(strong, room, text());
    painter.setFont(strong);
    painter.setPen(c.accent);
    painter.drawText(QRect(leftEdge(), 0, room, head), flags, text());
    painter.setFont(sized(1));
    painter.setPen(c.text);
    painter.drawText(QRect(leftEdge(), head, room, height() - head), flags, m_sentence);
}

void LinkButton::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        return click();
    QAbstractButton::keyPressEvent(event);
}

} // namespace loopwright
