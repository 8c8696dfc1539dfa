#pragma once
// What an order of a van brings is held to the van's own history.

#include "app/actions/Joining.h"

namespace loopwright {

/// Refused with "broken_chain" in the place if an event of the van's chain does not tell of
/// something that the order brings, or a certificate is not the van's to bring. `known`: what is
/// here of the chain already.
Result<void> checkSeals(const Database &database, const std::vector<Event> &known,
                        const Joining &joining);

} // namespace loopwright
