#pragma once
// The check of a North American number NPA-NXX-XXXX: N is 2 to 9, N11 is a service
// code, and an area code with 9 in the middle is held for the expansion of the plan. Source: the
// facts collected there on the North American Numbering Plan.

#include <string_view>

namespace loopwright {

enum class NanpFault
{
    None,
    FirstDigit,  ///< error: the first digit is not 2 to 9
    ServiceCode, ///< error: N11
    Held,        ///< warning, of an area code only: N9X
};

/// `code` has three ASCII digits.
inline NanpFault officeCodeFault(std::string_view code)
{
    if (code[0] < '2')
        return NanpFault::FirstDigit;
    return code[1] == '1' && code[2] == '1' ? NanpFault::ServiceCode : NanpFault::None;
}

inline NanpFault areaCodeFault(std::string_view code)
{
    const NanpFault fault = officeCodeFault(code);
    return fault == NanpFault::None && code[1] == '9' ? NanpFault::Held : fault;
}

} // namespace loopwright
