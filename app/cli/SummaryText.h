#pragma once
// The evaluation of a run for a person.

#include "core/errortest/G821.h"

namespace loopwright {

QString summaryText(const ErrorSummary &summary);

} // namespace loopwright
