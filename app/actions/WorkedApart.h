#pragma once
// Whether two worked on an order, neither knowing of what the other did.

#include "app/actions/Joining.h"

#include <QSet>

namespace loopwright {

enum class Apart
{
    No,
    AsBefore, ///< something of the office is still unseen: as it was noted then
    Yes,
};

/// Of two stations it is asked what either knew when it told last, so that it does not matter who
/// came first; of the office, which sees all that is here, whether what it did was unseen as more
/// came. Contents of one id are one piece of work. `before`: ids of the facts that the order had
/// before the bundle.
Result<Apart> workedApart(const Database &database, const Drawing &drawing,
                          const QSet<QString> &before);

/// Whether it proves anything, so that it counts as work.
bool isEvidence(const Fact &fact);

} // namespace loopwright
