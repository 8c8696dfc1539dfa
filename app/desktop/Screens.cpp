#include "app/desktop/Screens.h"

#include "app/desktop/screens/BoardScreen.h"

namespace loopwright {

namespace {

template<class S>
Screen *make(Workplace &workplace)
{
    return new S(workplace);
}

constexpr ScreenEntry entries[] = {
    {"board", QT_TRANSLATE_NOOP("Screens", "Board"),
     QT_TRANSLATE_NOOP("Screens", "Every order, where it stands and why"), GlyphShape::Board,
     &make<BoardScreen>},
};

} // namespace

std::span<const ScreenEntry> allScreens()
{
    return entries;
}

} // namespace loopwright
