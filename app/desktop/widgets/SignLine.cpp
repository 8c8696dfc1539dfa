#include "app/desktop/widgets/SignLine.h"

#include "app/desktop/AccessibleParts.h"
#include "app/desktop/Theme.h"

#include <QHBoxLayout>

namespace loopwright {

namespace {

struct SignRow
{
    Status sign;
    GlyphShape shape;
    QColor Colours::*colour;
};
constexpr SignRow signRows[] = {{Status::None, GlyphShape::Note, &Colours::muted},
                                {Status::Done, GlyphShape::Done, &Colours::good},
                                {Status::Failed, GlyphShape::Failed, &Colours::bad},
                                {Status::Open, GlyphShape::Open, &Colours::muted},
                                {Status::NotNeeded, GlyphShape::NotNeeded, &Colours::muted},
                                {Status::Doubtful, GlyphShape::Doubtful, &Colours::doubtful},
                                {Status::Away, GlyphShape::Away, &Colours::accent},
                                {Status::Note, GlyphShape::Note, &Colours::muted}};

const SignRow &rowOf(Status sign)
{
    return signRows[std::size_t(sign)];
}

} // namespace

Status signOf(Severity severity)
{
    switch (severity) {
    case Severity::Note:
        return Status::Note;
    case Severity::Warning:
        return Status::Doubtful;
    case Severity::Error:
        return Status::Failed;
    }
    return Status::None;
}

GlyphShape shapeOf(Status sign)
{
    return rowOf(sign).shape;
}

QColor colourOf(Status sign)
{
    return colours().*rowOf(sign).colour;
}

SignLine::SignLine(QWidget *parent)
    : QWidget(parent)
    , m_text(new QLabel)
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_text);
    m_text->setWordWrap(true);
    m_text->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_text->setTextFormat(Qt::PlainText);
    whenThemed(this, [this] { layOut(); });
}

void SignLine::show(Status sign, const QString &text)
{
    m_sign = sign;
    m_text->setText(text);
    setAccessibleName(text);
    layOut();
}

void SignLine::tell(Status sign, const QString &text)
{
    show(sign, text);
    setVisible(!text.isEmpty());
    m_told = isVisible() ? text : QString();
    announce(*this, text, sign == Status::Failed ? Tone::Urgent : Tone::Polite);
}

void SignLine::tellIfNew(Status sign, const QString &text)
{
    if (text != m_told || text.isEmpty())
        return tell(sign, text);
    show(sign, text);
    setVisible(true);
}

void SignLine::setWrapping(bool on)
{
    m_text->setWordWrap(on);
}

void SignLine::setSelectable(bool on)
{
    m_text->setTextInteractionFlags(on ? Qt::TextSelectableByMouse : Qt::NoTextInteraction);
}

void SignLine::layOut()
{
    const bool quiet = m_sign == Status::None || m_sign == Status::NotNeeded;
    m_text->setForegroundRole(quiet ? QPalette::PlaceholderText : QPalette::WindowText);
    layout()->setContentsMargins(m_sign == Status::None ? 0 : em(1.5), 0, 0, 0);
    update();
}

void SignLine::paintEvent(QPaintEvent *)
{
    if (m_sign == Status::None)
        return;
    QPainter painter(this);
    const double lineHeight = QFontMetricsF(m_text->font()).height();
    const double side = em(1);
    drawGlyph(painter, shapeOf(m_sign), QRectF(0, (lineHeight - side) / 2, side, side),
              colourOf(m_sign), palette().color(QPalette::Window));
}

} // namespace loopwright
