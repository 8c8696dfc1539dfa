#include "app/desktop/widgets/KeyedChoice.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/Glyph.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace loopwright {

namespace {

int segmentHeight()
{
    return em(hitEm);
}

/// The key that each answer shows. A letter that its label does not have, because it is of another
/// language than the one the letter was chosen for, gives way to the first free letter that it has,
/// the beginnings of words first.
QString keysToShow(const std::vector<KeyedOption> &options)
{
    const auto has = [](const KeyedOption &option) {
        return !option.key.isLetter() || option.label.contains(option.key, Qt::CaseInsensitive);
    };
    QString taken, keys;
    for (const KeyedOption &each : options)
        if (has(each))
            taken += each.key;
    for (const KeyedOption &each : options) {
        QString letters;
        for (const QString &word : each.label.split(' ', Qt::SkipEmptyParts))
            letters += word.front();
        letters += each.label;
        const auto free = std::ranges::find_if(
            letters, [&taken](QChar c) { return c.isLetter() && !taken.contains(c.toUpper()); });
        keys += has(each) || free == letters.end() ? each.key : free->toUpper();
        taken += keys.back();
    }
    return keys;
}

} // namespace

KeyedChoice::KeyedChoice(std::vector<KeyedOption> options, QWidget *parent)
    : QWidget(parent)
    , m_options(std::move(options))
    , m_keys(keysToShow(m_options))
{
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    whenThemed(this, [this] { updateGeometry(); });
}

QString KeyedChoice::code() const
{
    return m_chosen < 0 ? QString() : m_options[std::size_t(m_chosen)].code;
}

void KeyedChoice::setCode(const QString &code)
{
    const auto found = std::ranges::find(m_options, code, &KeyedOption::code);
    m_chosen = found == m_options.end() ? -1 : int(found - m_options.begin());
    tellName();
    update();
}

void KeyedChoice::setName(const QString &name)
{
    m_name = name;
    tellName();
}

void KeyedChoice::tellName()
{
    setAccessibleName(m_chosen < 0
                          ? tr("%1, nothing chosen").arg(m_name)
                          : tr("%1, %2").arg(m_name, m_options[std::size_t(m_chosen)].label));
}

int KeyedChoice::segmentWidth(std::size_t index) const
{
    const QFontMetrics metrics(sized(1, QFont::DemiBold));
    return em(3.6) + metrics.horizontalAdvance(m_options[index].label);
}

std::vector<QRect> KeyedChoice::segments(int width) const
{
    std::vector<QRect> list;
    const int height = segmentHeight(), gap = em(0.3);
    int x = 0, y = 0;
    for (std::size_t i = 0; i < m_options.size(); ++i) {
        const int wide = std::min(segmentWidth(i), std::max(width, em(4)));
        if (x > 0 && x + wide > width) {
            x = 0;
            y += height + gap;
        }
        list.emplace_back(x, y, wide, height);
        x += wide + gap;
    }
    return list;
}

QSize KeyedChoice::sizeHint() const
{
    int width = 0;
    for (std::size_t i = 0; i < m_options.size(); ++i)
        width += segmentWidth(i) + em(0.3);
    return {width, segmentHeight()};
}

QSize KeyedChoice::minimumSizeHint() const
{
    return {em(6), segmentHeight()};
}

int KeyedChoice::heightForWidth(int width) const
{
    const auto list = segments(width);
    return list.empty() ? segmentHeight() : list.back().bottom() + 1;
}

void KeyedChoice::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours &c = colours();
    const auto list = segments(width());
    for (std::size_t i = 0; i < list.size(); ++i) {
        const bool on = int(i) == m_chosen;
        const QRectF box = QRectF(list[i]).adjusted(0.5, 0.5, -0.5, -0.5);
        painter.setPen(QPen(on ? c.accent : c.frame, on ? 2 : 1));
        painter.setBrush(!isEnabled() ? c.window : on ? c.selected : c.base);
        painter.drawRoundedRect(box, em(0.25), em(0.25));
        const QRectF sign(box.left() + em(0.55), box.center().y() - em(0.65), em(1.3), em(1.3));
        if (on) {
            drawGlyph(painter, GlyphShape::Done, sign, c.onSelected, c.selected);
        } else {
            painter.setPen(c.muted);
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(sign, em(0.2), em(0.2));
            painter.setFont(sized(0.85, QFont::DemiBold));
            painter.drawText(sign, Qt::AlignCenter, m_keys.mid(qsizetype(i), 1));
        }
        painter.setPen(!isEnabled() ? c.muted : on ? c.onSelected : c.text);
        painter.setFont(sized(1, on ? QFont::DemiBold : QFont::Normal));
        const QRectF words = box.adjusted(em(2.3), 0, -em(0.4), 0);
        painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(m_options[i].label, Qt::ElideRight,
                                                          int(words.width())));
    }
}

void KeyedChoice::choose(int index)
{
    m_chosen = index;
    tellName();
    update();
    emit edited();
    emit chosen(code());
}

void KeyedChoice::edit(const QString &code)
{
    setCode(code);
    emit edited();
}

int KeyedChoice::answerOf(QChar key) const
{
    if (const auto shown = m_keys.indexOf(key); shown >= 0)
        return int(shown);
    const auto known = std::ranges::find(m_options, key, &KeyedOption::key);
    return known == m_options.end() ? -1 : int(known - m_options.begin());
}

void KeyedChoice::keyPressEvent(QKeyEvent *event)
{
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    const QString typed = event->text().toUpper();
    if (const int named = plain && typed.size() == 1 ? answerOf(typed.front()) : -1; named >= 0)
        return choose(named);
    const int last = int(m_options.size()) - 1;
    switch (event->key()) {
    case Qt::Key_Left:
        edit(m_options[std::size_t(std::max(m_chosen - 1, 0))].code);
        return;
    case Qt::Key_Right:
        edit(m_options[std::size_t(std::min(m_chosen + 1, last))].code);
        return;
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
        edit({});
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void KeyedChoice::mousePressEvent(QMouseEvent *event)
{
    const auto list = segments(width());
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i].contains(event->position().toPoint()))
            choose(int(i));
}

} // namespace loopwright
