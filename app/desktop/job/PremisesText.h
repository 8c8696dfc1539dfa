#pragma once
// The other lines at the premises of an order, in words.

#include "app/actions/Orders.h"

namespace loopwright {

/// "Also at these premises (F7): A-2001, analog, due 6 Mar 2026"; empty where there is none.
QString alsoHereText(const OrderView &view);
/// "analog, due 6 Mar 2026, at Safety"
QString lineText(const BoardRow &row);

} // namespace loopwright
