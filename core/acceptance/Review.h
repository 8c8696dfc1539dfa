#pragma once
// What is said of an entry while it is typed, before it is recorded: a hazard, a contradiction, a
// figure outside its limit, what a layer that is down or a cause means and what to check first. It
// decides nothing: what counts is judged of what was recorded (Judge.h).

#include "core/acceptance/Fact.h"
#include "core/base/Finding.h"
#include "core/base/LimitSet.h"

namespace loopwright {

/// `typed` holds the keys of a fact of the kind, as far as they are typed; what cannot be read yet
/// is left out, so that a slip in one field hides nothing in another. `field` of a finding is the
/// key that it speaks of, or empty. An error is a hazard or a contradiction; a warning may be
/// recorded as it is.
Findings review(FactKind kind, const QJsonObject &typed, const ServiceOrder &order,
                const LimitSet &limits);

} // namespace loopwright
