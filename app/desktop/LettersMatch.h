#pragma once
// Whether a name is meant by some of its letters: words, their beginnings, initials, or any letters
// in their order. Case and accents do not count.

#include <QString>

#include <optional>

namespace loopwright {

/// The smaller, the nearer; nothing where it is not meant. Whoever asks nothing means all.
std::optional<int> lettersMatch(const QString &name, const QString &asked);

} // namespace loopwright
