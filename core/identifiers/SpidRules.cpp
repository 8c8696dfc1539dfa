#include "core/identifiers/SpidRules.h"

#include "core/identifiers/Nanp.h"

namespace loopwright {

namespace {

constexpr int genericLength = 14;
constexpr int highestTerminalId = 62;
constexpr int allTerminals = 63; // Q.932, from memory
constexpr int highestGenericTerminalId = 8;
constexpr int highestSharingId = 32;

int valueOf(std::string_view digits, int from, int length)
{
    int value = 0;
    for (int i = from; i < from + length; ++i)
        value = value * 10 + (digits[std::size_t(i)] - '0');
    return value;
}

bool isError(NanpFault fault)
{
    return fault == NanpFault::FirstDigit || fault == NanpFault::ServiceCode;
}

bool numberCanBe(std::string_view digits)
{
    const std::string_view office = digits.substr(digits.size() - 7, 3);
    return !isError(officeCodeFault(office)) &&
           (digits.size() == 7 || !isError(areaCodeFault(digits.substr(0, 3))));
}

bool isGeneric(std::string_view digits)
{
    if (digits.size() != genericLength || !numberCanBe(digits.substr(0, 10)))
        return false;
    const int sharing = valueOf(digits, 10, 2);
    const int terminal = valueOf(digits, 12, 2);
    return sharing >= 1 && sharing <= highestSharingId && terminal >= 1 &&
           terminal <= highestGenericTerminalId;
}

bool hasFiveEssForm(std::string_view digits)
{
    return digits.size() == 12 && digits.starts_with("01") && digits[9] == '0';
}

bool hasFiveEssCustomForm(std::string_view digits)
{
    return digits.size() == 10 && digits.starts_with("01") && digits[9] == '0';
}

void markGeneric(SpidJudge &judge)
{
    judge.number(0, 10);
    judge.part(SpidPartKind::SharingId, 2);
    judge.part(SpidPartKind::TerminalId, 2);
    judge.setEmbedded(0, 10);
}

// The DN7 of both 5ESS shapes stands after the prefix 01 and before a 0.
bool markFiveEss(SpidJudge &judge)
{
    judge.part(SpidPartKind::Prefix, 2);
    const bool good = judge.number(2, 7);
    judge.part(SpidPartKind::Suffix, 1);
    if (good)
        judge.setEmbedded(2, 7);
    return good;
}

void judgeGeneric(SpidJudge &judge)
{
    const bool good = judge.number(0, 10);
    judge.part(SpidPartKind::SharingId, 2);
    judge.part(SpidPartKind::TerminalId, 2);
    const int sharing = judge.value(10, 2);
    const int terminal = judge.value(12, 2);
    const bool sharingGood = sharing >= 1 && sharing <= highestSharingId;
    const bool terminalGood = terminal >= 1 && terminal <= highestGenericTerminalId;
    if (!sharingGood)
        judge.report(SpidFault::SharingId, 10, 2);
    if (!terminalGood)
        judge.report(SpidFault::GenericTerminalId, 12, 2);
    if (!good || !sharingGood || !terminalGood)
        return;
    judge.setEmbedded(0, 10);
    if (sharing != 1 || terminal != 1)
        judge.report(SpidFault::NotUsualIds, 10, 4);
}

void judgeNi2(SpidJudge &judge)
{
    if (isGeneric(judge.digits()))
        markGeneric(judge);
    else
        judge.report(SpidFault::NotGeneric);
}

void judgeNi1Ewsd(SpidJudge &judge)
{
    if (isGeneric(judge.digits()))
        markGeneric(judge);
    else
        judge.report(SpidFault::Shape);
}

void judgeNi1FiveEss(SpidJudge &judge)
{
    if (hasFiveEssForm(judge.digits())) {
        const bool good = markFiveEss(judge);
        judge.part(SpidPartKind::TerminalId, 2);
        const int terminal = judge.value(10, 2);
        if (terminal > allTerminals)
            judge.report(SpidFault::TerminalId, 10, 2);
        else if (terminal == allTerminals && good)
            judge.report(SpidFault::TerminalIdAll, 10, 2);
    } else {
        judgeNi1Ewsd(judge);
    }
}

void judgeNi1Dms100(SpidJudge &judge)
{
    if (!judge.number(0, 10))
        return;
    judge.setEmbedded(0, 10);
    const auto terminalId = [&judge](int from) {
        judge.part(SpidPartKind::TerminalId, 2);
        if (judge.value(from, 2) > highestTerminalId)
            judge.report(SpidFault::TerminalIdUnusual, from, 2);
    };
    switch (judge.length()) {
    case 10:
        judge.report(SpidFault::NoTerminalId);
        break;
    case 12:
        terminalId(10);
        break;
    case 13:
        judge.part(SpidPartKind::Suffix, 1);
        if (judge.value(10, 1) != 1 && judge.value(10, 1) != 2)
            judge.report(SpidFault::SuffixUnusual, 10, 1);
        terminalId(11);
        break;
    case 14:
        judge.part(SpidPartKind::SharingId, 2);
        if (judge.value(10, 2) < 1 || judge.value(10, 2) > highestSharingId)
            judge.report(SpidFault::SharingIdUnusual, 10, 2);
        terminalId(12);
        break;
    default:
        judge.report(SpidFault::Shape);
    }
}

void judgeNi1(SpidJudge &judge)
{
    for (const auto rule : {SpidRule::Ni1FiveEss, SpidRule::Ni1Dms100, SpidRule::Ni1Ewsd})
        if (judge.acceptedBy(rule))
            return;
    judge.report(SpidFault::Shape);
}

void judgeCustomFiveEss(SpidJudge &judge)
{
    if (hasFiveEssCustomForm(judge.digits()))
        markFiveEss(judge);
    else
        judge.report(SpidFault::Shape);
}

void judgeCustomDms100(SpidJudge &judge)
{
    if (!judge.number(0, 10))
        return;
    judge.setEmbedded(0, 10);
    if (judge.length() > 12)
        judge.report(SpidFault::Shape);
    else if (judge.length() > 10)
        judge.part(SpidPartKind::Suffix, judge.length() - 10);
}

void judgeByRule(SpidRule rule, SpidJudge &judge)
{
    switch (rule) {
    case SpidRule::None:
        break;
    case SpidRule::Generic:
        return judgeGeneric(judge);
    case SpidRule::Ni2:
        return judgeNi2(judge);
    case SpidRule::Ni1:
        return judgeNi1(judge);
    case SpidRule::Ni1FiveEss:
        return judgeNi1FiveEss(judge);
    case SpidRule::Ni1Dms100:
        return judgeNi1Dms100(judge);
    case SpidRule::Ni1Ewsd:
        return judgeNi1Ewsd(judge);
    case SpidRule::CustomFiveEss:
        return judgeCustomFiveEss(judge);
    case SpidRule::CustomDms100:
        return judgeCustomDms100(judge);
    }
}

} // namespace

std::string_view comparableDn(const DigitText &dn)
{
    if (!dn.onlyDigits)
        return {};
    if (dn.count == 11 && dn.kept[0] == '1')
        return dn.view().substr(1);
    return !dn.plus && (dn.count == 7 || dn.count == 10) ? dn.view() : std::string_view();
}

SpidShape shapeOf(std::string_view digits)
{
    if (isGeneric(digits))
        return SpidShape::Generic;
    if (hasFiveEssForm(digits) && numberCanBe(digits.substr(2, 7)) &&
        valueOf(digits, 10, 2) <= highestTerminalId)
        return SpidShape::FiveEss;
    if (hasFiveEssCustomForm(digits) && numberCanBe(digits.substr(2, 7)))
        return SpidShape::FiveEssCustom;
    return SpidShape::None;
}

SpidJudge::SpidJudge(const ProtocolVariant &variant, std::string_view spid, std::string_view dn)
    : m_variant(variant)
    , m_typed(spid)
    , m_typedDn(dn)
    , m_spid(stripSeparators(spid))
    , m_dn(stripSeparators(dn))
{
    if (!passesBounds())
        return;
    judgeByRule(variant.spidRule, *this);
    compareWithDn();
}

SpidJudge::SpidJudge(const SpidJudge &other, SpidRule rule)
    : m_variant(other.m_variant)
    , m_spid(other.m_spid)
{
    judgeByRule(rule, *this);
}

// Presence, alphabet and bounds. False if there is nothing left to judge.
bool SpidJudge::passesBounds()
{
    if (m_spid.isBlank()) {
        if (m_variant.spid == SpidRequirement::Required)
            report(SpidFault::Missing);
        return false;
    }
    if (!m_variant.hasSpid())
        report(SpidFault::NotUsed);
    else if (!m_spid.onlyDigits || m_spid.plus)
        report(SpidFault::Character);
    else if (m_spid.count >= m_variant.minDigits && m_spid.count <= m_variant.maxDigits)
        return true;
    else if (m_variant.minDigits == m_variant.maxDigits)
        report(SpidFault::GenericLength);
    else
        report(m_spid.count > m_variant.maxDigits ? SpidFault::TooLong : SpidFault::TooShort);
    return false;
}

// Never an error: the SPID is built on the main number of the terminal, which need not be the one
// on the order, and after an area-code split it may keep the old code (National ISDN Council,
// spid.htm).
void SpidJudge::compareWithDn()
{
    const std::string_view dn = comparableDn(m_dn);
    if (m_embedded.empty() || dn.empty())
        return;
    m_compared = true;
    if (m_embedded.substr(m_embedded.size() - 7) != dn.substr(dn.size() - 7))
        report(SpidFault::DnMismatch);
    else if (m_embedded.size() == 10 && dn.size() == 10 &&
             m_embedded.substr(0, 3) != dn.substr(0, 3))
        report(SpidFault::AreaCodeDiffers, 0, 3);
}

Severity SpidJudge::worst() const
{
    Severity result = Severity::Note;
    for (const SpidFaultFound &fault : faults())
        result = std::max(result, fault.severity);
    return result;
}

int SpidJudge::value(int from, int length) const
{
    return valueOf(digits(), from, length);
}

void SpidJudge::report(SpidFault what, int from, int length)
{
    Q_ASSERT(m_faultCount < m_faults.size());
    m_faults[m_faultCount++] = {what, severityOf(what), from, length};
}

void SpidJudge::part(SpidPartKind kind, int length)
{
    int from = 0;
    for (const SpidSpan &span : parts())
        from += span.length;
    m_parts[m_partCount++] = {kind, from, length};
}

bool SpidJudge::number(int from, int length)
{
    bool good = true;
    if (length == 10) {
        const NanpFault fault = areaCodeFault(digits().substr(from, 3));
        part(SpidPartKind::AreaCode, 3);
        if (fault == NanpFault::Held)
            report(SpidFault::AreaCodeHeld, from, 3);
        else if (isError(fault))
            report(fault == NanpFault::FirstDigit ? SpidFault::AreaCodeFirst
                                                  : SpidFault::AreaCodeService,
                   from, 3);
        good = !isError(fault);
    }
    part(SpidPartKind::Number, 7);
    const int office = from + length - 7;
    const NanpFault fault = officeCodeFault(digits().substr(office, 3));
    if (isError(fault))
        report(fault == NanpFault::FirstDigit ? SpidFault::OfficeCodeFirst
                                              : SpidFault::OfficeCodeService,
               office, 3);
    return good && !isError(fault);
}

bool SpidJudge::acceptedBy(SpidRule rule)
{
    const SpidJudge other(*this, rule);
    if (other.worst() != Severity::Note)
        return false;
    m_parts = other.m_parts;
    m_partCount = other.m_partCount;
    if (!other.m_embedded.empty())
        setEmbedded(int(other.m_embedded.data() - other.digits().data()),
                    int(other.m_embedded.size()));
    return true;
}

} // namespace loopwright
