#pragma once
// Something that a person did and can take back.

#include "app/actions/Records.h"

namespace loopwright {

struct DoneStep
{
    QString sentence; ///< "3 orders assigned to A. Rivera."
    QString remark;   ///< what is doubtful about it
    /// Takes it back by a further event; refused if it was changed since. Called beside the
    /// window's thread: it holds copies alone. Empty: there is no way back.
    std::function<Result<void>(Records &)> takeBack;
};

} // namespace loopwright
