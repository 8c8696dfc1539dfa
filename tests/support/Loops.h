#pragma once
// Short ways to write a make-up down in a test.

#include "core/loop/LoopMakeup.h"

namespace loopwright::loops {

inline LoopElement section(int gauge, double feet)
{
    return LoopElement::section(Wire::awg(gauge), {feet, LengthUnit::Foot});
}
inline LoopElement tap(int gauge, double feet)
{
    return LoopElement::tap(Wire::awg(gauge), {feet, LengthUnit::Foot});
}
inline LoopElement coil(double millihenry = 88)
{
    return LoopElement::coil(millihenry);
}
inline LoopMakeup makeup(std::vector<LoopElement> elements)
{
    LoopMakeup made;
    made.elements = std::move(elements);
    return made;
}

} // namespace loopwright::loops
