#pragma once
// How the program looks: three sets of colours, one size factor from 100 to 200 percent, and the
// fonts. Text and signs have a contrast of at least 4.5:1 on every ground they are drawn on, frames
// and focus 3:1 (WCAG 2.1, 1.4.3 and 1.4.11; ThemeTest computes it). Colour never carries a meaning
// alone: there is always a word or a shape beside it.
//
// Everything is measured in em (the size of the program's font), so that one factor scales all.

#include "core/base/EnumCodes.h"

#include <QApplication>
#include <QColor>
#include <QFont>
#include <QPalette>
#include <QWidget>

#include <functional>

namespace loopwright {

enum class Look
{
    Light,
    Dark,
    HighContrast
};
template<>
struct EnumCodes<Look>
{
    static constexpr std::pair<Look, const char *> table[] = {
        {Look::Light, "light"}, {Look::Dark, "dark"}, {Look::HighContrast, "high_contrast"}};
};

/// What a person chose: one of them, or as the system says.
enum class LookChoice
{
    System,
    Light,
    Dark,
    HighContrast
};
template<>
struct EnumCodes<LookChoice>
{
    static constexpr std::pair<LookChoice, const char *> table[] = {
        {LookChoice::System, "system"},
        {LookChoice::Light, "light"},
        {LookChoice::Dark, "dark"},
        {LookChoice::HighContrast, "high_contrast"}};
};
/// `system`: what the system says.
Look lookFor(LookChoice choice, Look system);

/// The colours that a palette has no role for, and those it has.
struct Colours
{
    QColor window; ///< ground of the window
    QColor base;   ///< ground of fields, tables and cards
    QColor raised; ///< ground of the rail and of heads
    QColor text;
    QColor muted; ///< text of less weight; still 4.5:1
    QColor line;  ///< hairlines between parts; carries no meaning
    QColor frame; ///< outlines of fields and buttons; 3:1
    QColor accent;
    QColor onAccent; ///< text on accent
    QColor selected; ///< ground of the selected row
    QColor onSelected;
    QColor good, bad, doubtful; ///< text and signs
    QColor goodGround, badGround, doubtfulGround;
};

const Colours &coloursOf(Look look);
/// The look that a palette was made for; Light for a palette of somebody else's.
Look lookOf(const QPalette &palette);
QPalette paletteOf(Look look);

/// The sizes that the menu offers, in percent.
inline constexpr int offeredSizes[] = {100, 125, 150, 175, 200};

/// `count` times the size of the program's font, in pixels.
int em(double count = 1);
/// How high what is hit on a ladder or with gloves is, in em: 9 mm where the system says nothing
/// else of its screen.
inline constexpr double hitEm = 2.6;
/// A property of pages whose buttons, fields and lists are all so high.
inline constexpr const char *hitWithGloves = "loopwright_hit_with_gloves";
/// The program's font at `times` its size.
QFont sized(double times, QFont::Weight weight = QFont::Normal);
/// A font whose digits all have one width, for identifiers and measured values.
QFont digitsFont(double times = 1, QFont::Weight weight = QFont::Normal);

/// Runs `apply` now and whenever the look or the size of the program changes, as long as `widget`
/// lives: for fonts, sizes in em, and colours that a widget sets for itself.
void whenThemed(QWidget *widget, std::function<void()> apply);
/// The colours in force.
const Colours &colours();

} // namespace loopwright
