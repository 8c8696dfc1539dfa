#pragma once
// Whether a line is still the one that was certified.

#include "core/order/ServiceOrder.h"

namespace loopwright {

/// What a later state of an order, or a later order for the same circuit, changed of the line, as
/// the end of a sentence: "the pair was changed from 17-204 to 17-205". Empty if it is the same
/// line at the same premises. A later order that names no pair, premises, customer or NT leaves
/// them as they were. The type of an order is not of the line.
QString lineChange(const ServiceOrder &then, const ServiceOrder &now);

} // namespace loopwright
