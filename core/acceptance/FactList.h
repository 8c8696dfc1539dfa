#pragma once
// Facts in a list, as they are stored and handed on.

#include "core/acceptance/Fact.h"

namespace loopwright {

/// Far above what any order has, and below what would fill the memory.
constexpr int mostFacts = 100'000;

QJsonArray listOf(const std::vector<Fact> &facts);
/// BadInput, with its place, for the first that is none.
Result<std::vector<Fact>> readFacts(JsonReader &reader, const QString &key);

} // namespace loopwright
