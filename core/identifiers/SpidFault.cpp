#include "core/identifiers/SpidFault.h"

namespace loopwright {

namespace {

struct FaultRow
{
    SpidFault fault;
    Severity severity;
    std::string_view code;
    const char *sentence;
    const char *pieces; ///< what stands in %1, %2, ...: letters as in SpidFault.h
};

constexpr Severity note = Severity::Note;
constexpr Severity warning = Severity::Warning;
constexpr Severity error = Severity::Error;

// In the order of the enumeration.
constexpr FaultRow faultTable[] = {
    {SpidFault::Missing, error, "spid_missing",
     QT_TRANSLATE_NOOP(
         "core",
         "The SPID is missing: %1 needs one for each terminal, take it from the provider's order"),
     "v"},
    {SpidFault::NotUsed, error, "spid_not_used",
     QT_TRANSLATE_NOOP("core", "%1 has no SPID: leave it empty%2"), "vh"},
    {SpidFault::Character, error, "spid_character", "%1", "c"},
    {SpidFault::TooLong, error, "spid_too_long",
     QT_TRANSLATE_NOOP("core", "%1 digits: a SPID has at most %2"), "dM"},
    {SpidFault::TooShort, error, "spid_too_short",
     QT_TRANSLATE_NOOP("core", "%1 digits: a SPID of %2 has at least %3"), "dvm"},
    {SpidFault::GenericLength, error, "spid_length",
     QT_TRANSLATE_NOOP("core", "%1 digits: the generic format has 14, which are area code, number, "
                               "2 for the sharing id and 2 for the terminal id%2"),
     "dh"},
    {SpidFault::AreaCodeFirst, error, "spid_area_code",
     QT_TRANSLATE_NOOP("core", "Area code %1 (%2) cannot be, it begins with 2 to 9%3"), "prh"},
    {SpidFault::AreaCodeService, error, "spid_area_code",
     QT_TRANSLATE_NOOP("core", "Area code %1 (%2) cannot be, it is a service number"), "pr"},
    {SpidFault::AreaCodeHeld, warning, "spid_area_code_held",
     QT_TRANSLATE_NOOP(
         "core",
         "Area code %1 (%2) is held for expansion and not given out: confirm it with the provider"),
     "pr"},
    {SpidFault::OfficeCodeFirst, error, "spid_office_code",
     QT_TRANSLATE_NOOP("core", "Office code %1 (%2) cannot be, it begins with 2 to 9"), "pr"},
    {SpidFault::OfficeCodeService, error, "spid_office_code",
     QT_TRANSLATE_NOOP("core", "Office code %1 (%2) cannot be, it is a service number"), "pr"},
    {SpidFault::SharingId, error, "spid_sharing_id",
     QT_TRANSLATE_NOOP("core", "Sharing id %1 (%2) is outside 01 to 32"), "pr"},
    {SpidFault::GenericTerminalId, error, "spid_terminal_id",
     QT_TRANSLATE_NOOP("core", "Terminal id %1 (%2) is outside 01 to 08"), "pr"},
    {SpidFault::TerminalId, error, "spid_terminal_id",
     QT_TRANSLATE_NOOP("core", "Terminal id %1 (%2) is outside 00 to 62"), "pr"},
    {SpidFault::TerminalIdAll, warning, "spid_terminal_id_all",
     QT_TRANSLATE_NOOP(
         "core", "Terminal id %1 (%2) stands for all terminals: confirm it with the provider"),
     "pr"},
    {SpidFault::Shape, warning, "spid_shape",
     QT_TRANSLATE_NOOP("core",
                       "%1 digits in no documented shape of %2: confirm it with the provider%3"),
     "dvh"},
    {SpidFault::NotGeneric, warning, "spid_not_generic",
     QT_TRANSLATE_NOOP(
         "core", "Not the generic format, legal all the same: confirm it with the provider%1"),
     "h"},
    {SpidFault::NoTerminalId, warning, "spid_no_terminal_id",
     QT_TRANSLATE_NOOP("core",
                       "The number alone, without terminal id: confirm it with the provider%1"),
     "h"},
    {SpidFault::SuffixUnusual, warning, "spid_suffix_unusual",
     QT_TRANSLATE_NOOP("core",
                       "Suffix %1 (%2) where 1 or 2 is usual: confirm it with the provider"),
     "pr"},
    {SpidFault::TerminalIdUnusual, warning, "spid_terminal_id_unusual",
     QT_TRANSLATE_NOOP("core",
                       "Terminal id %1 (%2) where 00 to 62 is usual: confirm it with the provider"),
     "pr"},
    {SpidFault::SharingIdUnusual, warning, "spid_sharing_id_unusual",
     QT_TRANSLATE_NOOP("core",
                       "Sharing id %1 (%2) where 01 to 32 is usual: confirm it with the provider"),
     "pr"},
    {SpidFault::DnMismatch, warning, "spid_dn_mismatch",
     QT_TRANSLATE_NOOP("core", "The SPID holds %1, the DN is %2: confirm which one is right"),
     "sn"},
    {SpidFault::AreaCodeDiffers, warning, "spid_area_code_differs",
     QT_TRANSLATE_NOOP(
         "core", "The SPID holds area code %1, the DN %2: ask whether the SPID kept the old one"),
     "ab"},
    {SpidFault::NotUsualIds, note, "spid_not_0101",
     QT_TRANSLATE_NOOP(
         "core",
         "Sharing and terminal id are %1: legal, but not every provider offers other than 0101"),
     "p"},
    {SpidFault::LostZero, warning, "spid_lost_zero",
     QT_TRANSLATE_NOOP("core", "%1 digits: the 0 in front is lost, as a spreadsheet does"), "d"},
    {SpidFault::LostEnding, error, "spid_ending_missing",
     QT_TRANSLATE_NOOP("core", "%1 digits: the ending %2 is missing, the same for every terminal "
                               "with a profile of its own"),
     "de"},
    {SpidFault::Exchanged, error, "spid_dn_exchanged",
     QT_TRANSLATE_NOOP("core", "SPID and DN stand in each other's place"), ""},
    {SpidFault::Scientific, error, "spid_scientific", "%1", "t"},
    {SpidFault::Decimal, note, "spid_decimal", "%1", "t"},
    {SpidFault::Apostrophe, error, "spid_apostrophe", "%1", "t"},
    {SpidFault::Rounded, note, "spid_rounded", "%1", "t"},
};

const FaultRow &rowOf(SpidFault fault)
{
    const FaultRow &row = faultTable[std::size_t(fault)];
    Q_ASSERT(row.fault == fault);
    return row;
}

} // namespace

Severity severityOf(SpidFault fault)
{
    return rowOf(fault).severity;
}

std::string_view codeOf(SpidFault fault)
{
    return rowOf(fault).code;
}

SpidSentence sentenceOf(SpidFault fault)
{
    return {rowOf(fault).sentence, rowOf(fault).pieces};
}

} // namespace loopwright
