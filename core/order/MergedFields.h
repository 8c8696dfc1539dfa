#pragma once
// The values of an order that several stations changed, each for itself.

#include "core/order/ServiceOrder.h"

namespace loopwright {

struct ToldFields
{
    OrderFields base; ///< the order as the station took it along
    OrderFields now;  ///< as it has it
};

/// What one station changed, or several alike, is taken over. Where two changed a value otherwise,
/// or the office did meanwhile (`own` is what it says by itself), it stays as the office has it.
/// The order in which they are named changes nothing.
OrderFields mergedFields(const OrderFields &own, const std::vector<ToldFields> &told);

} // namespace loopwright
