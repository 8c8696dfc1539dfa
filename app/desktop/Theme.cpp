#include "app/desktop/Theme.h"

#include <QEvent>
#include <QFontDatabase>
#include <QFontInfo>

#include <algorithm>
#include <array>

namespace loopwright {

namespace {

QColor rgb(unsigned value)
{
    return QColor::fromRgb(0xff000000U | value);
}

Colours lightColours()
{
    return {.window = rgb(0xf3f1ec),
            .base = rgb(0xffffff),
            .raised = rgb(0xe8e5dd),
            .text = rgb(0x1b2327),
            .muted = rgb(0x525d64),
            .line = rgb(0xd5d1c6),
            .frame = rgb(0x7d8489),
            .accent = rgb(0x0f5a66),
            .onAccent = rgb(0xffffff),
            .selected = rgb(0xd3e6e8),
            .onSelected = rgb(0x10272b),
            .good = rgb(0x1d6638),
            .bad = rgb(0xa12620),
            .doubtful = rgb(0x7a4f00),
            .goodGround = rgb(0xe5f2e8),
            .badGround = rgb(0xfbe9e6),
            .doubtfulGround = rgb(0xfaf0d8)};
}

Colours darkColours()
{
    return {.window = rgb(0x171b1e),
            .base = rgb(0x1f2529),
            .raised = rgb(0x111517),
            .text = rgb(0xe7ebec),
            .muted = rgb(0xa6b1b7),
            .line = rgb(0x343c41),
            .frame = rgb(0x76828a),
            .accent = rgb(0x74c7d2),
            .onAccent = rgb(0x06262b),
            .selected = rgb(0x244850),
            .onSelected = rgb(0xf2f8f9),
            .good = rgb(0x83d39c),
            .bad = rgb(0xff9d92),
            .doubtful = rgb(0xf0c56e),
            .goodGround = rgb(0x1c3325),
            .badGround = rgb(0x40211e),
            .doubtfulGround = rgb(0x3a2f16)};
}

Colours highContrastColours()
{
    return {.window = rgb(0x000000),
            .base = rgb(0x000000),
            .raised = rgb(0x000000),
            .text = rgb(0xffffff),
            .muted = rgb(0xc0c0c0),
            .line = rgb(0xffffff),
            .frame = rgb(0xffffff),
            .accent = rgb(0xffe34d),
            .onAccent = rgb(0x000000),
            .selected = rgb(0xffe34d),
            .onSelected = rgb(0x000000),
            .good = rgb(0x8dff9f),
            .bad = rgb(0xffa59b),
            .doubtful = rgb(0xffd27a),
            .goodGround = rgb(0x000000),
            .badGround = rgb(0x000000),
            .doubtfulGround = rgb(0x000000)};
}

/// Runs the wish of one widget again when the program's font or palette has changed.
class ThemeWatch : public QObject
{
public:
    ThemeWatch(QWidget *widget, std::function<void()> apply)
        : QObject(widget)
        , m_apply(std::move(apply))
    {
        widget->installEventFilter(this);
    }

    bool eventFilter(QObject *object, QEvent *event) override
    {
        if (event->type() == QEvent::ApplicationFontChange ||
            event->type() == QEvent::ApplicationPaletteChange)
            m_apply();
        return QObject::eventFilter(object, event);
    }

private:
    std::function<void()> m_apply;
};

} // namespace

Look lookFor(LookChoice choice, Look system)
{
    return fromText<Look>(toText(choice)).value_or(system);
}

const Colours &coloursOf(Look look)
{
    static const std::array<Colours, 3> all = {lightColours(), darkColours(),
                                               highContrastColours()};
    return all[std::size_t(look)];
}

Look lookOf(const QPalette &palette)
{
    for (const Look look : {Look::Light, Look::Dark, Look::HighContrast})
        if (palette.color(QPalette::Window) == coloursOf(look).window)
            return look;
    return Look::Light;
}

const Colours &colours()
{
    return coloursOf(lookOf(QApplication::palette()));
}

QPalette paletteOf(Look look)
{
    const Colours &c = coloursOf(look);
    QPalette palette;
    const std::pair<QPalette::ColorRole, QColor> roles[] = {
        {QPalette::Window, c.window},
        {QPalette::WindowText, c.text},
        {QPalette::Base, c.base},
        {QPalette::AlternateBase, c.window},
        {QPalette::Text, c.text},
        {QPalette::Button, look == Look::Dark ? QColor(0x2a, 0x32, 0x37) : c.base},
        {QPalette::ButtonText, c.text},
        {QPalette::PlaceholderText, c.muted},
        {QPalette::Highlight, c.selected},
        {QPalette::HighlightedText, c.onSelected},
        {QPalette::Link, c.accent},
        {QPalette::LinkVisited, c.accent},
        {QPalette::BrightText, c.bad},
        {QPalette::ToolTipBase, c.raised},
        {QPalette::ToolTipText, c.text},
        {QPalette::Light, c.base.lighter(105)},
        {QPalette::Midlight, c.line},
        {QPalette::Mid, c.frame},
        {QPalette::Dark, c.frame},
        {QPalette::Shadow, c.frame}};
    for (const auto &[role, colour] : roles)
        palette.setColor(role, colour);
    for (const auto role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText})
        palette.setColor(QPalette::Disabled, role, c.muted);
    return palette;
}

int em(double count)
{
    return int(count * QFontInfo(QApplication::font()).pixelSize() + 0.5);
}

QFont sized(double times, QFont::Weight weight)
{
    QFont font = QApplication::font();
    font.setPointSizeF(font.pointSizeF() * times);
    font.setWeight(weight);
    return font;
}

QFont digitsFont(double times, QFont::Weight weight)
{
    QFont font = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    font.setPointSizeF(QApplication::font().pointSizeF() * times);
    font.setWeight(weight);
    return font;
}

void whenThemed(QWidget *widget, std::function<void()> apply)
{
    apply();
    new ThemeWatch(widget, std::move(apply)); // the widget owns it
}

} // namespace loopwright
