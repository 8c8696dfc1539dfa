#pragma once
// What must be told of a thing that is well all the same: a trouble to clear, a record to mend.

#include "core/base/Text.h"

namespace loopwright {

struct Remark
{
    Text trade; ///< one sentence for who works on the line
    Text plain; ///< the same for who ordered it

    bool operator==(const Remark &) const = default;
};

} // namespace loopwright
