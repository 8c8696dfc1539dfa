#pragma once
// The register of screens, in the order of the rail on the left of the window and of Ctrl+1, Ctrl+2
// ….

#include "app/desktop/Screen.h"
#include "app/desktop/widgets/Glyph.h"

#include <span>

namespace loopwright {

struct ScreenEntry
{
    const char *key;  ///< Screen::key() of the page
    const char *name; ///< on the rail
    const char *hint; ///< what it is for, in one line
    GlyphShape glyph;
    Screen *(*make)(DesktopContext &workplace); ///< the caller owns the page
    const char *under = nullptr; ///< not on the rail: belongs under the screen of that key
};

std::span<const ScreenEntry> allScreens();

} // namespace loopwright
