#pragma once
// What is said of a fact that is taken as it is, for it does not do what its writer may expect: it
// is told when it is typed and when it is recorded, and no decision rests on it. A fact that counts
// for nothing is another matter (Evidence.h), and so are figures that cannot be true
// (Contradiction.h).

#include "core/acceptance/Evidence.h"

namespace loopwright {

struct Doubt
{
    const char *code = "";
    const char *field = ""; ///< key of the fact
    Text sentence;
    const Fact *of = nullptr; ///< the fact that is doubted, if it is another one: a safety card
};

/// Nothing was found, and beside it stands what was done.
std::optional<Doubt> doubtIn(const ClearedFact &cleared);
/// A closing that closes nothing: of a card that read no hazard of this pair or these premises, or
/// dated before it.
std::optional<Doubt> closingDoubt(const Fact &closing, const SafetyCards &cards);
/// A layer that is up, a call that went through, current: the office feeds the pair.
bool showsOffice(const FactBody &body);
/// Such a fact on a pair of which the card says that the office is disconnected; `card` is the one
/// that holds, none if none does.
std::optional<Doubt> officeDoubt(const FactBody &body, const Card *card);

/// Totals that contradict each other on a run that has failed all the same: it counts.
std::optional<Doubt> doubtIn(const RunFact &run);

/// The first of them that is true of a fact of the order.
std::optional<Doubt> doubtIn(const Fact &fact, const Evidence &evidence);

} // namespace loopwright
