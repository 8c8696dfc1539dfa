#pragma once
// Places along a make-up at which something may hang or stand that is not on record.

#include "core/loop/LoopMakeup.h"

namespace loopwright {

/// Between two elements, or within a section.
struct LoopPlace
{
    std::size_t before = 0; ///< position of the element that comes next
    double share = 0;       ///< of that section that lies in front; 0 to below 1
};

inline constexpr std::size_t mostLoopPlaces = 24;

/// Joints and the middles of sections, the customer's end included; of more than `mostLoopPlaces`
/// as many, evenly chosen.
std::vector<LoopPlace> loopPlaces(const LoopMakeup &makeup);

/// Puts an element in; returns where it stands.
std::size_t insertAt(LoopMakeup &makeup, const LoopPlace &place, const LoopElement &element);

/// The section at a place, else the nearest one; 24 AWG if the make-up has none.
LoopElement cableAt(const LoopMakeup &makeup, const LoopPlace &place);

} // namespace loopwright
