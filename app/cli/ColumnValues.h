#pragma once
// Columns of an order as words of a command line.

#include "core/order/ServiceOrder.h"

namespace loopwright {

/// "COLUMN=VALUE" each; a later one of the same column holds. Usage, with `place`, for another
/// form.
Result<OrderFields> columnValues(const QStringList &words, const QString &place);

} // namespace loopwright
