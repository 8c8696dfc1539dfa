#pragma once
// An order that a van has is changed in the office only if that is said: the van does not know of
// it, and what it measures meanwhile may be held against other values.

#include "app/actions/Records.h"
#include "core/base/Text.h"

namespace loopwright {

/// "Order 26-0001 is with van-7 since 2026-03-10; …"; empty if it is at home, or it was said that
/// what is out is to be changed too (Records::changeWhatIsOut).
Result<Text> outTrouble(Records &records, const QString &order);
/// OrderOut with that sentence.
Result<void> checkAtHome(Records &records, const QString &order);

} // namespace loopwright
