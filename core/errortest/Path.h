#pragma once
// The way that the test signal takes in a detector check or an error-rate run.

#include "core/base/EnumCodes.h"

namespace loopwright {

enum class Path
{
    SelfCall, ///< a call from one B channel of the line to its other one: covers both channels
    TestLine, ///< a loopback test line of the serving office: covers the channel of the call
    FarEnd,   ///< a loopback or a second test set at the far end: covers the channel of the call
    NtLoop,   ///< a loopback in the NT: for diagnosis, covers no channel
};

template<>
struct EnumCodes<Path>
{
    static constexpr std::pair<Path, const char *> table[] = {{Path::SelfCall, "self_call"},
                                                              {Path::TestLine, "test_line"},
                                                              {Path::FarEnd, "far_end"},
                                                              {Path::NtLoop, "nt_loop"}};
};

} // namespace loopwright
