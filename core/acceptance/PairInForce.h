#pragma once
// By which names the pair is known that evidence must have been measured on.

#include "core/acceptance/DecisionInput.h"

namespace loopwright {

/// "C7-101" and "c7 101" are one name of a pair.
bool isSamePair(const QString &a, const QString &b);

/// The first is the one to be shown: the order's, or what was said on site (`standing`: the facts
/// that are not struck out) to have taken its place, until the order is changed.
QStringList pairInForce(const DecisionInput &input, const std::vector<const Fact *> &standing);

} // namespace loopwright
