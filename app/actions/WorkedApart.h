#pragma once
// Whether two worked on an order, neither knowing of what the other did.

#include "app/actions/BundleOrders.h"
#include "app/actions/Joining.h"

namespace loopwright {

enum class Apart
{
    No,
    AsBefore, ///< something of the office is still unseen: as it was noted then
    Yes,
};

/// Of two stations it is asked what either knew when it told last, so that it does not matter who
/// came first; of the office, which sees all that is here, whether what it did was unseen as more
/// came. Contents of one id are one piece of work. `parts`: what the bundle adds, contents too.
Result<Apart> workedApart(const Database &database, const Drawing &drawing,
                          const AddedParts &parts);

} // namespace loopwright
