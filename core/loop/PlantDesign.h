#pragma once
// The design rules by which outside plant is laid out, shown for information beside the
// qualification of a loop; none of them decides. Resistance design and its revision are known from
// memory; the serving area from published equipment practice (HDSL2 unit, 61223026L2-5A p. 21, and
// HDSL plant, 363-718-104 p. 19).
// Cable by diameter is taken by the gauge that it comes closest to: 0.40 mm as 26 AWG, coarser as
// 24 AWG and coarser; for 0.32 mm the serving area has no figure (convention).

#include "core/loop/LoopMakeup.h"
#include "core/loop/RuleResult.h"

namespace loopwright {

/// Office to customer within a resistance; load coils beyond a length.
RuleSet resistanceDesign(const LoopMakeup &makeup, const LimitSet &limits);

/// To 18 kft: resistance, no coils, taps in total. To 24 kft: a higher resistance, coils of 88 mH,
/// end section with its taps within bounds. Beyond: carrier, not copper.
RuleSet revisedResistanceDesign(const LoopMakeup &makeup, const LimitSet &limits);

/// No coils; length with taps by gauge; mixed with 26 AWG at most 12 - 3 L26 / (9 - Ltap) kft; taps
/// in total and singly; changes of gauge along the sections.
RuleSet carrierServingArea(const LoopMakeup &makeup, const LimitSet &limits);

/// Load coils if the length asks for them, else none: not suitable if they are missing,
/// marginal if they are not wanted.
RuleResult coilsByLength(const QString &key, const LoopMakeup &makeup, const Limit &length);

/// From the last load coil to the customer, taps there included, feet; the whole loop without
/// coils.
double endSectionFt(const LoopMakeup &makeup);

} // namespace loopwright
