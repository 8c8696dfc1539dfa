#pragma once
// Rounds of work that something goes wrong in. Each round begins with records of its own, and its
// chance follows from the seed and its number: what is found can be sought again by itself.

#include "tests/soak/Looking.h"

namespace loopwright::soak {

/// "kills", "power", "disk", "io", "writers", "clock"
QStringList kinds();

struct Plan
{
    QString folder; ///< empty, and for this alone; what has a fault stays there
    int first = 1;
    int rounds = 1000;
    quint32 seed = 1;
};

Tally runRounds(const QString &kind, const Plan &plan);

} // namespace loopwright::soak
