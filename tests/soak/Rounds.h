#pragma once
// Rounds of work that something goes wrong in. Each round begins with records of its own, and its
// chance follows from the seed and its number: what is found can be sought again by itself.

#include "tests/soak/Looking.h"

namespace loopwright::soak {

/// "kills", "power", "disk", "io", "writers", "clock"
QStringList kinds();

struct Plan
{
    /// Empty, and for this alone; what has a fault stays there, and what the rounds of all kinds
    /// begin with stays in the first one.
    QString folder;
    int first = 1;
    int rounds = 1000;
    quint32 seed = 1;
};

Tally runRounds(const QString &kind, const Plan &plan);

} // namespace loopwright::soak
