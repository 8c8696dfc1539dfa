#pragma once
// What can be wrong with a SPID: severity, stable code and sentence of every fault, in one table.

#include "core/base/Finding.h"

#include <string_view>

namespace loopwright {

/// What can be found; severity, code and sentence of each stand in one table.
enum class SpidFault
{
    Missing,
    NotUsed,
    Character,
    TooLong,
    TooShort,
    GenericLength,
    AreaCodeFirst,
    AreaCodeService,
    AreaCodeHeld,
    OfficeCodeFirst,
    OfficeCodeService,
    SharingId,
    GenericTerminalId,
    TerminalId,
    TerminalIdAll,
    Shape,
    NotGeneric,
    NoTerminalId,
    SuffixUnusual,
    TerminalIdUnusual,
    SharingIdUnusual,
    DnMismatch,
    AreaCodeDiffers,
    NotUsualIds,
    // Recognised troubles; they take the severity of what they explain.
    LostZero,
    LostEnding,
    Exchanged,
    Scientific,
    Decimal,
    Apostrophe,
    Rounded,
};

struct SpidFaultFound
{
    SpidFault what = SpidFault::Shape;
    Severity severity = Severity::Error;
    int from = 0; ///< the digits it speaks of
    int length = 0;
};

Severity severityOf(SpidFault fault);
/// e.g. "spid_terminal_id".
std::string_view codeOf(SpidFault fault);

/// What is wrong and what to do (no full stop), with places %1, %2, ... for what was found.
struct SpidSentence
{
    const char *source; ///< marked for translation
    /// A letter for each place: d number of digits, m the fewest and M the most that the variant
    /// has, p the digits spoken of, r where they stand, v the variant's name, s the number inside
    /// the SPID, n the DN, a and b their area codes, c the odd characters, t the trouble of the
    /// spelling, e the variant's sole ending, h a hint at the variant whose shape it has.
    std::string_view pieces;
};

SpidSentence sentenceOf(SpidFault fault);

} // namespace loopwright
