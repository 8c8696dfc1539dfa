#pragma once
// The colours and the font in force, for the painters of app/print that draw on the screen too.

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/print/PictureStyle.h"

namespace loopwright {

inline PictureStyle screenPictureStyle(const QColor &ground, double times = 1)
{
    const Colours &c = colours();
    QFont font = QApplication::font();
    font.setPixelSize(em(times)); // the painters reckon in the painter's units
    return {.ground = ground,
            .text = c.text,
            .muted = c.muted,
            .line = c.line,
            .accent = c.accent,
            .good = c.good,
            .bad = c.bad,
            .doubtful = c.doubtful,
            .font = font,
            .word = localizedWord};
}

} // namespace loopwright
