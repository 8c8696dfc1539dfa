#pragma once
// Chance that is the same for a seed with every standard library, whose distributions differ.

#include <QtGlobal>

#include <random>

namespace loopwright::soak {

using Chance = std::mt19937;

/// 0 to `most`.
inline qint64 upTo(qint64 most, Chance &chance)
{
    return qint64(quint64(chance()) % quint64(most + 1));
}

inline bool oneIn(int n, Chance &chance)
{
    return upTo(n - 1, chance) == 0;
}

} // namespace loopwright::soak
