#include "core/identifiers/SpidFault.h"

namespace loopwright {

namespace {

struct FaultRow
{
    SpidFault fault;
    Severity severity;
    std::string_view code;
    std::string_view sentence;
};

constexpr Severity note = Severity::Note;
constexpr Severity warning = Severity::Warning;
constexpr Severity error = Severity::Error;

// In the order of the enumeration.
constexpr FaultRow faultTable[] = {
    {SpidFault::Missing, error, "spid_missing",
     "The SPID is missing: %v needs one for each terminal, take it from the provider's order"},
    {SpidFault::NotUsed, error, "spid_not_used", "%v has no SPID: leave it empty%h"},
    {SpidFault::Character, error, "spid_character", "%c"},
    {SpidFault::TooLong, error, "spid_too_long", "%d digits: a SPID has at most %M"},
    {SpidFault::TooShort, error, "spid_too_short", "%d digits: a SPID of %v has at least %m"},
    {SpidFault::GenericLength, error, "spid_length",
     "%d digits: the generic format has 14, which are area code, number, 2 for the sharing id and "
     "2 "
     "for the terminal id%h"},
    {SpidFault::AreaCodeFirst, error, "spid_area_code",
     "Area code %p (%r) cannot be, it begins with 2 to 9%h"},
    {SpidFault::AreaCodeService, error, "spid_area_code",
     "Area code %p (%r) cannot be, it is a service number"},
    {SpidFault::AreaCodeHeld, warning, "spid_area_code_held",
     "Area code %p (%r) is held for expansion and not given out: confirm it with the provider"},
    {SpidFault::OfficeCodeFirst, error, "spid_office_code",
     "Office code %p (%r) cannot be, it begins with 2 to 9"},
    {SpidFault::OfficeCodeService, error, "spid_office_code",
     "Office code %p (%r) cannot be, it is a service number"},
    {SpidFault::SharingId, error, "spid_sharing_id", "Sharing id %p (%r) is outside 01 to 32"},
    {SpidFault::GenericTerminalId, error, "spid_terminal_id",
     "Terminal id %p (%r) is outside 01 to 08"},
    {SpidFault::TerminalId, error, "spid_terminal_id", "Terminal id %p (%r) is outside 00 to 62"},
    {SpidFault::TerminalIdAll, warning, "spid_terminal_id_all",
     "Terminal id %p (%r) stands for all terminals: confirm it with the provider"},
    {SpidFault::Shape, warning, "spid_shape",
     "%d digits in no documented shape of %v: confirm it with the provider%h"},
    {SpidFault::NotGeneric, warning, "spid_not_generic",
     "Not the generic format, legal all the same: confirm it with the provider%h"},
    {SpidFault::NoTerminalId, warning, "spid_no_terminal_id",
     "The number alone, without terminal id: confirm it with the provider%h"},
    {SpidFault::SuffixUnusual, warning, "spid_suffix_unusual",
     "Suffix %p (%r) where 1 or 2 is usual: confirm it with the provider"},
    {SpidFault::TerminalIdUnusual, warning, "spid_terminal_id_unusual",
     "Terminal id %p (%r) where 00 to 62 is usual: confirm it with the provider"},
    {SpidFault::SharingIdUnusual, warning, "spid_sharing_id_unusual",
     "Sharing id %p (%r) where 01 to 32 is usual: confirm it with the provider"},
    {SpidFault::DnMismatch, warning, "spid_dn_mismatch",
     "The SPID holds %s, the DN is %n: confirm which one is right"},
    {SpidFault::AreaCodeDiffers, warning, "spid_area_code_differs",
     "The SPID holds area code %a, the DN %b: ask whether the SPID kept the old one"},
    {SpidFault::NotUsualIds, note, "spid_not_0101",
     "Sharing and terminal id are %p: legal, but not every provider offers other than 0101"},
    {SpidFault::LostZero, warning, "spid_lost_zero",
     "%d digits: the 0 in front is lost, as a spreadsheet does"},
    {SpidFault::LostEnding, error, "spid_ending_missing",
     "%d digits: the ending %e is missing, the same for every terminal with a profile of its own"},
    {SpidFault::Exchanged, error, "spid_dn_exchanged", "SPID and DN stand in each other's place"},
    {SpidFault::Scientific, error, "spid_scientific", "%t"},
    {SpidFault::Decimal, note, "spid_decimal", "%t"},
    {SpidFault::Apostrophe, error, "spid_apostrophe", "%t"},
    {SpidFault::Rounded, note, "spid_rounded", "%t"},
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

std::string_view sentenceOf(SpidFault fault)
{
    return rowOf(fault).sentence;
}

} // namespace loopwright
