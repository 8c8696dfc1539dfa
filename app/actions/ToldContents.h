#pragma once
// Of one id with several contents (`fact_differs`) each may be recorded under an id of its own: in
// the name of all who told it so, and with what they said of it since.

#include "core/acceptance/StationConflict.h"
#include "db/Transaction.h"

namespace loopwright {

/// What that side told, recorded under an id made of it, and told by every station that told the
/// same; by none if the office did. Nothing is added anew, and none is returned, if it is there.
Result<std::optional<Fact>> addToldContent(Transaction &transaction,
                                           const StationConflict &conflict, const QString &side);

/// What somebody settled for counts under an id of its own; what the office recorded under that
/// which it has, as long as nobody else struck it out. Who told this content and struck out what he
/// told under the id struck out this, whichever came first, the void or the settlement. Returns
/// what was added.
Result<std::vector<Fact>> takeSettled(Transaction &transaction, const StationConflict &settled);
/// The same of all that somebody settled of the order, where something was struck out since.
Result<void> takeAllSettled(Transaction &transaction, const QString &order);

} // namespace loopwright
