#pragma once
// The papers that a page can be laid out for.

#include "core/base/EnumCodes.h"

namespace loopwright {

enum class Paper
{
    A4,
    Letter
};
template<>
struct EnumCodes<Paper>
{
    static constexpr std::pair<Paper, const char *> table[] = {{Paper::A4, "a4"},
                                                               {Paper::Letter, "letter"}};
};

} // namespace loopwright
