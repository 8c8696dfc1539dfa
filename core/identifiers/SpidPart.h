#pragma once
// What the digits of a SPID are for.

#include "core/base/EnumCodes.h"

#include <QString>

namespace loopwright {

enum class SpidPartKind
{
    Prefix,
    AreaCode,
    Number,
    SharingId,
    TerminalId,
    Suffix,
    Other, ///< digits whose meaning is not known
};

template<>
struct EnumCodes<SpidPartKind>
{
    static constexpr std::pair<SpidPartKind, const char *> table[] = {
        {SpidPartKind::Prefix, "prefix"},
        {SpidPartKind::AreaCode, "area_code"},
        {SpidPartKind::Number, "number"},
        {SpidPartKind::SharingId, "sharing_id"},
        {SpidPartKind::TerminalId, "terminal_id"},
        {SpidPartKind::Suffix, "suffix"},
        {SpidPartKind::Other, "other"}};
};

struct SpidSpan
{
    SpidPartKind kind = SpidPartKind::Other;
    int from = 0;
    int length = 0;
};

struct SpidPart
{
    SpidPartKind kind = SpidPartKind::Other;
    int from = 0; ///< place of its first digit in SpidCheck::digits, from 0
    int length = 0;
    QString digits;
    QString meaning; ///< e.g. "area code"
};

} // namespace loopwright
