#pragma once
// The papers that a page can be laid out for.

#include "core/base/Words.h"

namespace loopwright {

enum class Paper
{
    A4,
    Letter
};
template<>
struct Words<Paper>
{
    static constexpr std::pair<Paper, const char *> table[] = {{Paper::A4, "a4"},
                                                               {Paper::Letter, "letter"}};
};

} // namespace loopwright
