#pragma once
// In the office: what vans bring back joins the records. In any order, as often as it comes; each
// order whole or not at all. Refused when it is stopped; what is in stays.

#include "app/actions/BundleAnswer.h"

namespace loopwright {

Result<std::vector<TakenBundle>> receiveBundles(Records &records,
                                                const std::vector<BundleInput> &files,
                                                const Progress &progress = {});

} // namespace loopwright
