#pragma once
// In the van: what the office handed out comes into the van's records.

#include "app/actions/BundleAnswer.h"

namespace loopwright {

/// Each file by itself, each order whole or not at all. The first one that is opened says to which
/// office the van belongs.
Result<std::vector<TakenBundle>> openBundles(Records &records,
                                             const std::vector<BundleInput> &files);

} // namespace loopwright
