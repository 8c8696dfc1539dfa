#pragma once
// A person's PIN as the records keep it: argon2id (RFC 9106) with a salt of its own, in the text
// form that names its costs, so that they can be raised later.

#include "core/base/Result.h"

namespace loopwright {

constexpr int shortestPin = 4, longestPin = 64; ///< characters

/// Usage if it is too short, too long, or holds a line break.
Result<QString> pinHash(const QString &pin);
/// Slow on purpose: who has the hash cannot try many. False for an empty hash.
bool pinMatches(const QString &hash, const QString &pin);

} // namespace loopwright
