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

/// Why a code that is well formed is on no subscriber's line; null if it may be. The codes are from
/// memory: a warning, never an error.
inline const char *whyNoAreaOfLines(std::string_view code)
{
    if (code.substr(0, 2) == "37" || code.substr(0, 2) == "96")
        return "is set aside for an expansion of the plan";
    if (code == "700" || code == "710" || code == "456" || code == "900")
        return "is of no area: it belongs to special services";
    if (code == "500" || code == "521" || code == "522" || code == "533" || code == "544" ||
        code == "566" || code == "577" || code == "588")
        return "is of no area: it belongs to personal numbers";
    if (code[0] == '8' && code[1] == code[2] && code != "811")
        return "is of no area: it is free of charge for the caller";
    return nullptr;
}

/// `line` is the last four digits. 555-0100 to 555-0199, set aside for examples, are let pass.
inline const char *whyNoOfficeOfLines(std::string_view code, std::string_view line)
{
    if (code == "958" || code == "959")
        return "is set aside for tests of the plant";
    if (code == "950")
        return "is set aside for reaching carriers";
    if (code == "976")
        return "is set aside for announcements that are charged for";
    if (code == "555" && line.substr(0, 2) != "01")
        return "is set aside for information services";
    return nullptr;
}

} // namespace loopwright
